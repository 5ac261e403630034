package tenthmark.samples.corpus;

import tenthmark.measurement.wording.Language;

/** New drawings by language. */
public final class Draw {

  private Draw() {}

  /** An English drawing. */
  public static Drawing en(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.ENGLISH, writer);
  }

  /** A German drawing. */
  public static Drawing de(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.GERMAN, writer);
  }

  /** A French drawing. */
  public static Drawing fr(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.FRENCH, writer);
  }

  /** A Spanish drawing. */
  public static Drawing es(String name, String layout, String topic, Writer writer) {
    return new Drawing(name, layout, topic, Language.SPANISH, writer);
  }
}
