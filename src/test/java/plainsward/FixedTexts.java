package plainsward;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every text of the program that a person may be shown, with its place. */
final class FixedTexts {
  private static final Path TABLES = Path.of("corpus/tables");
  private static final Path NOTES = Path.of("corpus/notes");
  private static final Path SCREEN = Path.of("src/main/resources/terminal");
  private static final Path TYPED = Path.of("words.txt");
  private static final Path CODE = Path.of("src/main/java");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
  private static final Pattern JOIN = Pattern.compile("\\s*\\+\\s*");
  private static final Pattern SENTENCE = Pattern.compile("[A-Z].*[a-z][.?!].*", Pattern.DOTALL);

  private FixedTexts() {}

  /**
   * A text.
   *
   * @param place the file, and the field where there is one
   * @param text its words
   */
  record Text(String place, String text) {}

  /** Those of the tables, by the file {@code reading-ease/fields.txt}. */
  static List<Text> ofTables() throws IOException {
    List<Text> all = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("src/test/resources/reading-ease/fields.txt"))) {
      if (!line.startsWith("#")) {
        String[] words = line.split(" ");
        Set<String> fields = Set.copyOf(Arrays.asList(words).subList(1, words.length));
        all.addAll(ofTable(TABLES.resolve(words[0] + ".json"), fields));
      }
    }
    return all;
  }

  private static List<Text> ofTable(Path table, Set<String> fields) throws IOException {
    List<Text> all = new ArrayList<>();
    String field = "";
    try (JsonParser json = new JsonFactory().createParser(table.toFile())) {
      for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
        if (token == JsonToken.FIELD_NAME) {
          field = json.currentName();
        } else if (token == JsonToken.VALUE_STRING && fields.contains(field)) {
          all.add(new Text(table.getFileName() + " " + field, json.getText()));
        }
      }
    }
    return all;
  }

  /** The notes of the handbook, their answers with their bodies. */
  static List<Text> ofNotes() throws IOException {
    List<Text> all = new ArrayList<>();
    for (Path note : files(NOTES, ".md")) {
      String whole = Files.readString(note);
      int body = whole.indexOf("\n---\n", 4);
      Matcher answer = Pattern.compile("(?m)^answer: \"?(.*?)\"?$").matcher(whole);
      String first = answer.find() ? answer.group(1) + "\n\n" : "";
      all.add(new Text(note.getFileName().toString(), first + whole.substring(body + 5)));
    }
    return all;
  }

  /**
   * Greeting, help and usage: a line is a sentence; of a line with an equals sign what it shows.
   */
  static List<Text> ofScreen() throws IOException {
    List<Text> all = new ArrayList<>();
    for (Path file : files(SCREEN, ".txt")) {
      for (String line : Files.readAllLines(file)) {
        boolean shown = !line.startsWith("#") && !line.isBlank() && !file.endsWith(TYPED);
        if (shown) {
          String text = line.substring(line.indexOf(" = ") < 0 ? 0 : line.indexOf(" = ") + 3);
          all.add(new Text(file.getFileName().toString(), text.replace("{}", "4").strip()));
        }
      }
    }
    return all;
  }

  /** Sentences that stand in the code, pieces joined by a plus taken as one. */
  static List<Text> ofCode() throws IOException {
    List<Text> all = new ArrayList<>();
    for (Path file : files(CODE, ".java")) {
      String code = Files.readString(file);
      Matcher literal = LITERAL.matcher(code);
      StringBuilder text = new StringBuilder();
      int end = -1;
      while (literal.find()) {
        boolean goesOn = end >= 0 && JOIN.matcher(code.substring(end, literal.start())).matches();
        if (!goesOn) {
          keep(all, file, text.toString());
          text.setLength(0);
        }
        text.append(literal.group(1).replace("\\\"", "\"").replace("\\n", "\n"));
        end = literal.end();
      }
      keep(all, file, text.toString());
    }
    return all;
  }

  private static void keep(List<Text> all, Path file, String text) {
    if (SENTENCE.matcher(text).matches() && text.contains(" ")) {
      all.add(new Text(file.getFileName().toString(), text));
    }
  }

  private static List<Path> files(Path folder, String end) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(f -> f.toString().endsWith(end)).sorted().toList();
    }
  }
}
