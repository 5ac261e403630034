package tenthmark.samples.corpus.finale;

import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Writer;

/** New drawings by language. */
final class Draw {

  private Draw() {}

  static Drawing en(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.ENGLISH, writer);
  }

  static Drawing de(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.GERMAN, writer);
  }

  static Drawing fr(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.FRENCH, writer);
  }

  static Drawing es(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.SPANISH, writer);
  }
}
