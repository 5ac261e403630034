package tenthmark.checker.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import tenthmark.checker.rules.Rule;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Message;

/**
 * Results as lines of JSON: of a rule the id and the severity, a file as it was named, a sentence
 * before it is said in a language.
 */
final class ResultLines {

  private record RuleKey(String id, Severity severity) {}

  private final ObjectMapper mapper;

  ResultLines(RuleCatalogue rules) {
    Map<String, RuleDeclaration> declared =
        rules.rules().stream()
            .map(Rule::declaration)
            .collect(Collectors.toMap(RuleDeclaration::id, Function.identity()));
    this.mapper =
        new ObjectMapper()
            .registerModule(new Jdk8Module())
            .registerModule(
                new SimpleModule()
                    .addSerializer(RuleDeclaration.class, new RuleWriter())
                    .addDeserializer(RuleDeclaration.class, new RuleReader(declared))
                    .addDeserializer(Message.class, new MessageReader())
                    .addSerializer(Path.class, new PathWriter())
                    .addDeserializer(Path.class, new PathReader()));
  }

  String write(Object line) {
    try {
      return mapper.writeValueAsString(line);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  <T> T read(String line, Class<T> type) throws JsonProcessingException {
    return mapper.readValue(line, type);
  }

  private static final class RuleWriter extends JsonSerializer<RuleDeclaration> {
    @Override
    public void serialize(RuleDeclaration rule, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writePOJO(new RuleKey(rule.id(), rule.severity()));
    }
  }

  private static final class RuleReader extends JsonDeserializer<RuleDeclaration> {

    private final Map<String, RuleDeclaration> declared;

    RuleReader(Map<String, RuleDeclaration> declared) {
      this.declared = declared;
    }

    @Override
    public RuleDeclaration deserialize(JsonParser json, DeserializationContext context)
        throws IOException {
      RuleKey key = context.readValue(json, RuleKey.class);
      RuleDeclaration rule = declared.get(key.id());
      return rule == null
          ? context.reportInputMismatch(RuleDeclaration.class, "there is no rule %s", key.id())
          : rule.withSeverity(key.severity());
    }
  }

  /** What fills a gap is told by its form: a text, a figure with its digits, or a message. */
  private static final class MessageReader extends JsonDeserializer<Message> {
    @Override
    public Message deserialize(JsonParser json, DeserializationContext context) throws IOException {
      return message(json.readValueAsTree());
    }

    private static Message message(JsonNode node) {
      List<Object> gaps = new ArrayList<>();
      node.path("gaps").forEach(gap -> gaps.add(gap(gap)));
      return new Message(node.path("key").asText(), gaps);
    }

    private static Object gap(JsonNode node) {
      if (node.isTextual()) {
        return node.asText();
      }
      return node.has("digits") ? new Message.Figure(node.path("digits").asText()) : message(node);
    }
  }

  private static final class PathWriter extends JsonSerializer<Path> {
    @Override
    public void serialize(Path path, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writeString(path.toString());
    }
  }

  private static final class PathReader extends JsonDeserializer<Path> {
    @Override
    public Path deserialize(JsonParser json, DeserializationContext context) throws IOException {
      return Path.of(json.getValueAsString());
    }
  }
}
