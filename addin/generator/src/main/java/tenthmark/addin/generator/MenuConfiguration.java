package tenthmark.addin.generator;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The configuration of menu, toolbar and protocol. Each command {@code tenthmark:<command>} has
 * icons of its name.
 */
final class MenuConfiguration {

  private static final String HEAD =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" \
      xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="%s" oor:package="%s">
      """;

  private static final String IN_MENU = "tenthmark:";

  /** The office does not ask for the state of such an address, so it needs no Java to show it. */
  private static final String IN_TOOLBAR = "service:tenthmark.Menu?";

  private static final String NAME = "Tenthmark";

  /** No menu of Calc has this letter, in any of our languages; without one, no key opens ours. */
  private static final String NAME_WITH_KEY = "Tenth~mark";

  private static final String TOOLBAR = "org.tenthmark.calc.toolbar";
  private static final String RIGHT_OF_STANDARD = "2000,0";
  private static final String SHEETS = "com.sun.star.sheet.SpreadsheetDocument";

  private MenuConfiguration() {}

  /** A line of the menu and a button of the toolbar. */
  sealed interface Entry {

    /**
     * A command.
     *
     * @param titles its title by language
     */
    record Item(String command, Map<String, String> titles) implements Entry {

      /** Sorts the titles, so that two builds are alike. */
      public Item {
        titles = new TreeMap<>(titles);
      }
    }

    /** A line between two groups of commands. */
    record Separator() implements Entry {}
  }

  static String addons(List<Entry> entries) {
    return HEAD.formatted("Addons", "org.openoffice.Office")
        + """
         <node oor:name="AddonUI">
          <node oor:name="OfficeMenuBar">
           <node oor:name="org.tenthmark.calc.menu" oor:op="replace">
            <prop oor:name="Title"><value xml:lang="en-US">%s</value></prop>
            <prop oor:name="Context"><value>%s</value></prop>
            <node oor:name="Submenu">
        %s\
            </node>
           </node>
          </node>
          <node oor:name="OfficeToolBar">
           <node oor:name="%s" oor:op="replace">
        %s\
           </node>
          </node>
          <node oor:name="Images">
        %s\
          </node>
         </node>
        </oor:component-data>
        """
            .formatted(
                NAME_WITH_KEY,
                SHEETS,
                places(entries, IN_MENU),
                TOOLBAR,
                places(entries, IN_TOOLBAR),
                images(entries, "menu", IN_MENU) + images(entries, "toolbar", IN_TOOLBAR));
  }

  static String protocol() {
    return HEAD.formatted("ProtocolHandler", "org.openoffice.Office")
        + """
         <node oor:name="HandlerSet">
          <node oor:name="tenthmark.Menu" oor:op="replace">
           <prop oor:name="Protocols"><value>tenthmark:*</value></prop>
          </node>
         </node>
        </oor:component-data>
        """;
  }

  static String toolbar() {
    return HEAD.formatted("CalcWindowState", "org.openoffice.Office.UI")
        + """
         <node oor:name="UIElements">
          <node oor:name="States">
           <node oor:name="private:resource/toolbar/addon_%s" oor:op="replace">
            <prop oor:name="UIName"><value xml:lang="en-US">%s</value></prop>
            <prop oor:name="DockingArea"><value>0</value></prop>
            <prop oor:name="DockPos"><value>%s</value></prop>
           </node>
          </node>
         </node>
        </oor:component-data>
        """
            .formatted(TOOLBAR, NAME, RIGHT_OF_STANDARD);
  }

  /** The entries, each in its place: the office sorts them by the names of their nodes. */
  private static String places(List<Entry> entries, String protocol) {
    return IntStream.range(0, entries.size())
        .mapToObj(
            place ->
                """
                     <node oor:name="m%02d" oor:op="replace">
                %s\
                     </node>
                """
                    .formatted(place, content(entries.get(place), protocol)))
        .collect(Collectors.joining());
  }

  private static String content(Entry entry, String protocol) {
    if (entry instanceof Entry.Item item) {
      return """
                <prop oor:name="URL"><value>%s%s</value></prop>
                <prop oor:name="Title">%s</prop>
                <prop oor:name="Target"><value>_self</value></prop>
                <prop oor:name="Context"><value>%s</value></prop>
          """
          .formatted(protocol, item.command(), titles(item), SHEETS);
    }
    return """
              <prop oor:name="URL"><value>private:separator</value></prop>
        """;
  }

  private static String titles(Entry.Item item) {
    return item.titles().entrySet().stream()
        .map(
            title ->
                "<value xml:lang=\"%s\">%s</value>"
                    .formatted(title.getKey(), Markup.escape(title.getValue())))
        .collect(Collectors.joining());
  }

  /** The office finds an icon by the address of its command. */
  private static String images(List<Entry> entries, String where, String protocol) {
    return entries.stream()
        .filter(Entry.Item.class::isInstance)
        .map(entry -> image(((Entry.Item) entry).command(), where, protocol))
        .collect(Collectors.joining());
  }

  private static String image(String command, String where, String protocol) {
    return """
            <node oor:name="tenthmark.%2$s.%1$s" oor:op="replace">
             <prop oor:name="URL"><value>%3$s%1$s</value></prop>
             <node oor:name="UserDefinedImages">
              <prop oor:name="ImageSmallURL"><value>%%origin%%/icons/%1$s-16.png</value></prop>
              <prop oor:name="ImageBigURL"><value>%%origin%%/icons/%1$s-26.png</value></prop>
             </node>
            </node>
        """
        .formatted(command, where, protocol);
  }
}
