package plainsward.terminal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plainsward.reply.Assumed;
import plainsward.reply.Reply;
import plainsward.reply.Understood;
import plainsward.units.Shown;

/**
 * What a reply was reckoned from: what was read, in one line, and what was assumed, a line each.
 */
final class GivenWords {
  /** Made when first wanted. */
  private static final class Hyphen {
    static final Pattern WITHIN = Pattern.compile("(?<=[a-z])-(?=[a-z])");
  }

  private GivenWords() {}

  /** The lines; none where nothing was read or assumed. */
  static List<String> of(Reply reply) {
    List<String> lines = new ArrayList<>();
    Set<String> read = new LinkedHashSet<>();
    reply.understood().forEach(u -> read.add(phrase(u) + whence(u.from())));
    if (!read.isEmpty()) {
      lines.add("I read: " + String.join(", ", read) + ".");
    }
    reply.assumed().forEach(a -> lines.add(assumed(a)));
    return lines;
  }

  /** What was read, a phrase each. */
  static List<String> read(Reply reply) {
    return reply.understood().stream().map(GivenWords::phrase).distinct().toList();
  }

  private static String phrase(Understood understood) {
    boolean asSaid = understood.name().equals("shape") || understood.name().equals("label_limit");
    String value =
        asSaid
            ? understood.said()
            : understood.word().map(GivenWords::spoken).orElse(understood.said());
    if (understood.value().isPresent() && !asSaid) {
      value =
          understood
              .high()
              .map(high -> Shown.range(understood.value().get(), high))
              .orElseGet(() -> Shown.of(understood.value().get()));
    }
    boolean leftOut = understood.word().equals(Optional.of(Understood.LEFT_OUT));
    return leftOut ? "less " + value : Names.phrase(understood.name(), value);
  }

  /** "tall-fescue" of a table as it is said. */
  private static String spoken(String word) {
    return word.indexOf('-') < 0 ? word : Hyphen.WITHIN.matcher(word).replaceAll(" ");
  }

  private static String whence(String from) {
    return switch (from) {
      case "earlier" -> " (said earlier)";
      case "saved" -> " (saved)";
      case "label" -> " (from the label)";
      default -> "";
    };
  }

  private static String assumed(Assumed assumed) {
    String phrase = Names.phrase(assumed.name(), Shown.of(assumed.value()));
    String reason = assumed.reason().strip();
    return "I assumed: " + phrase + (reason.isEmpty() ? "" : " (" + unstopped(reason) + ")") + ".";
  }

  private static String unstopped(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
