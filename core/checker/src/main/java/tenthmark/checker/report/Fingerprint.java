package tenthmark.checker.report;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import javax.measure.Unit;

/**
 * A check sum of a value, the same in each run of the program: two values that differ in any part
 * have different ones. What a value newly holds is part of it without a further line of code.
 */
public final class Fingerprint {

  private final MessageDigest digest = sha256();

  private Fingerprint() {}

  /** The check sum of values, in hexadecimal digits. */
  public static String of(Object... values) {
    Fingerprint sum = new Fingerprint();
    sum.add(List.of(values));
    return HexFormat.of().formatHex(sum.digest.digest());
  }

  /** The algorithm of all check sums. */
  public static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      // Every Java platform has it.
      throw new IllegalStateException(impossible);
    }
  }

  private void add(Object value) {
    if (isPlain(value)) {
      text(value.getClass().getSimpleName());
      text(value.toString());
    } else if (value instanceof Optional<?> optional) {
      add(optional.map(List::<Object>of).orElse(List.of()));
    } else if (value instanceof List<?> list) {
      text("list " + list.size());
      list.forEach(this::add);
    } else if (value instanceof Set<?> set) {
      unordered(set);
    } else if (value instanceof Map<?, ?> map) {
      unordered(map.entrySet());
    } else if (value instanceof Map.Entry<?, ?> entry) {
      add(List.of(entry.getKey(), entry.getValue()));
    } else {
      fields(value);
    }
  }

  private static boolean isPlain(Object value) {
    return value instanceof CharSequence
        || value instanceof Number
        || value instanceof Boolean
        || value instanceof Enum<?>
        || value instanceof Pattern
        || value instanceof Path
        || value instanceof Temporal
        || value instanceof OptionalInt
        || value instanceof OptionalDouble
        || value instanceof Unit<?>;
  }

  private void unordered(Set<?> set) {
    add(set.stream().map(one -> of(one)).sorted().toList());
  }

  /** Of a class of our own: one that is not must be dealt with above, lest it be overlooked. */
  private void fields(Object value) {
    Class<?> type = value.getClass();
    if (!type.getName().startsWith("tenthmark.")) {
      throw new IllegalArgumentException("no fingerprint of " + type.getName());
    }
    text(type.getName());
    try {
      List<Object> values = new ArrayList<>();
      for (Field field : type.getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers())) {
          field.setAccessible(true);
          values.add(Optional.ofNullable(field.get(value)));
        }
      }
      add(values);
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** With its length, so that no two sequences of texts are the same. */
  private void text(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
    digest.update(bytes);
  }
}
