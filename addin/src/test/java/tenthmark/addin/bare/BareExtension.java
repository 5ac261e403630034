package tenthmark.addin.bare;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * An extension with nothing but the function {@code TENTHMARK.BARE.HALF}, to measure beside ours.
 */
public final class BareExtension {

  private static final String MANIFEST =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
        <manifest:file-entry manifest:full-path="bare.idl"
            manifest:media-type="application/vnd.sun.star.uno-typelibrary;type=RDB"/>
        <manifest:file-entry manifest:full-path="bare.components"
            manifest:media-type="application/vnd.sun.star.uno-components"/>
        <manifest:file-entry manifest:full-path="CalcAddIns.xcu"
            manifest:media-type="application/vnd.sun.star.configuration-data"/>
      </manifest:manifest>
      """;

  private static final String COMPONENTS =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <components xmlns="http://openoffice.org/2010/uno-components">
        <component loader="com.sun.star.loader.Java2" uri="bare.jar">
          <implementation name="tenthmark.addin.bare.Bare">
            <service name="tenthmark.Bare"/>
          </implementation>
        </component>
      </components>
      """;

  private static final String INTERFACE =
      """
      module tenthmark {
      module addin {
      module bare {

      interface XBare {
        double half([in] any value);
      };

      };
      };

      service Bare : addin::bare::XBare;

      };
      """;

  private static final String FUNCTION =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" oor:name="CalcAddIns"
          oor:package="org.openoffice.Office">
       <node oor:name="AddInInfo">
        <node oor:name="tenthmark.Bare" oor:op="replace">
         <node oor:name="AddInFunctions">
          <node oor:name="half" oor:op="replace">
           <prop oor:name="DisplayName"><value xml:lang="en">BARE_HALF</value></prop>
           <prop oor:name="Category"><value>Add-In</value></prop>
           <prop oor:name="CompatibilityName"><value xml:lang="en">TENTHMARK.BARE.HALF</value></prop>
           <node oor:name="Parameters">
            <node oor:name="value" oor:op="replace">
             <prop oor:name="DisplayName"><value xml:lang="en">value</value></prop>
            </node>
           </node>
          </node>
         </node>
        </node>
       </node>
      </oor:component-data>
      """;

  private static final String DESCRIPTION =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <description xmlns="http://openoffice.org/extensions/description/2006">
        <identifier value="org.tenthmark.bare"/>
        <version value="1.0"/>
      </description>
      """;

  private BareExtension() {}

  /** Writes it into a folder. */
  public static Path in(Path folder) throws IOException {
    Path file = folder.resolve("bare.oxt");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      add(zip, "META-INF/manifest.xml", MANIFEST);
      add(zip, "description.xml", DESCRIPTION);
      add(zip, "bare.components", COMPONENTS);
      add(zip, "bare.idl", INTERFACE);
      add(zip, "CalcAddIns.xcu", FUNCTION);
      add(zip, "bare.jar", jar());
    }
    return file;
  }

  private static byte[] jar() throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().putValue("RegistrationClassName", Bare.class.getName());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
      for (Class<?> type : new Class<?>[] {XBare.class, Bare.class}) {
        String name = type.getName().replace('.', '/') + ".class";
        try (InputStream compiled = type.getResourceAsStream("/" + name)) {
          add(jar, name, compiled.readAllBytes());
        }
      }
    }
    return bytes.toByteArray();
  }

  private static void add(ZipOutputStream zip, String name, String text) throws IOException {
    add(zip, name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(content);
    zip.closeEntry();
  }
}
