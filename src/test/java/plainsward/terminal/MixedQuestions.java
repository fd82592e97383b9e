package plainsward.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A mix of questions, half sums and half words, for measuring speed: the lines of {@code
 * benchmark/questions.txt}, the sums among them with other numbers each time, so that hardly a
 * question comes twice, and the wordings of the search test.
 */
final class MixedQuestions {
  private static final Pattern NUMBER = Pattern.compile("(?<![\\d.,])[1-9]\\d?(?![\\d.,-])");
  private static final Pattern ASKED = Pattern.compile("\"ask\": \"([^\"]*)\"");
  private static final int SEED = 7;

  private MixedQuestions() {}

  /** So many questions, in an order that is the same every time. */
  static List<String> some(int many) throws IOException {
    List<String> sums = text("/benchmark/questions.txt").lines().toList();
    List<String> words =
        ASKED.matcher(text("/handbook/wordings.jsonl")).results().map(m -> m.group(1)).toList();
    Random random = new Random(SEED);
    List<String> mixed = new ArrayList<>();
    while (mixed.size() < many) {
      mixed.add(changed(sums.get(random.nextInt(sums.size())), random));
      mixed.add(words.get(random.nextInt(words.size())));
    }
    return mixed.subList(0, many);
  }

  /** The question with other small numbers. */
  private static String changed(String question, Random random) {
    Matcher numbers = NUMBER.matcher(question);
    return numbers.replaceAll(found -> Integer.toString(1 + random.nextInt(60)));
  }

  private static String text(String resource) throws IOException {
    try (InputStream in = MixedQuestions.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
