package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plainsward.reply.Reply;
import plainsward.trade.Row;

/**
 * Whether a grass takes an active ingredient, or which it takes and which hurt it, by the table of
 * grasses; the label's list of grasses has the last word.
 */
final class GrassVerdict {
  private static final Set<String> DONE =
      Set.of("sprayed", "used", "applied", "treated", "yellow", "brown", "dying", "dead");

  private static final Set<String> SAFETY =
      Set.of(
          "safe",
          "hurt",
          "hurts",
          "harm",
          "harms",
          "damage",
          "damages",
          "kill",
          "kills",
          "burn",
          "burns",
          "tolerate",
          "tolerates",
          "sensitive",
          "tender",
          "cant",
          "take",
          "takes",
          "ok",
          "okay");

  /** The parts of a three-way, which the table names as one. */
  private static final Set<String> OF_THREE_WAY = Set.of("2,4-d", "mecoprop", "dicamba");

  private final Request request;
  private final Row grass;

  private GrassVerdict(Request request, Row grass) {
    this.request = request;
    this.grass = grass;
  }

  /** The reply where the turn asks what a grass takes and nothing is sprayed yet. */
  static Optional<Reply> of(Request request, Sheet sheet) {
    boolean asked = request.turn().has("grass") && !request.turn().hasWord(DONE);
    boolean of = request.turn().has("active") || request.turn().hasWord(SAFETY);
    return GrassWords.named(request)
        .filter(row -> asked && of)
        .map(row -> new GrassVerdict(request, row).told(sheet));
  }

  private Reply told(Sheet sheet) {
    sheet.caution("read-label", "grass-type");
    sheet.say(
        "The label must list the grass; look under \"Turf\" or \"Sites\". Heat, drought and a high "
            + "rate hurt grass that takes it otherwise.");
    List<String> named = actives();
    if (named.isEmpty()) {
      sheet.suggest("What kills clover in " + grass.text("name") + "?");
      return sheet.answer(lists());
    }
    List<String> lines = new ArrayList<>();
    named.forEach(active -> lines.add(line(active)));
    sheet.say(lists());
    return sheet.answer(String.join(" ", lines));
  }

  private List<String> actives() {
    return request.turn().of("active").stream()
        .flatMap(f -> f.word().stream())
        .map(GrassVerdict::name)
        .distinct()
        .toList();
  }

  private static String name(String active) {
    return ChooseTopic.active(active).map(row -> row.text("name")).orElse(active);
  }

  private String line(String active) {
    String verdict =
        isAmong(active, grass.texts("hurt_by"))
            ? " is hurt by " + active + ": don't use it there."
            : takes(active)
                ? " usually takes " + active + ", at the label's rate for that grass."
                : " and "
                    + active
                    + ": my table doesn't say, so go by the label's list of grasses.";
    return capital(grass.text("name")) + verdict;
  }

  private boolean takes(String active) {
    List<String> takes = grass.texts("tolerates");
    boolean part = OF_THREE_WAY.contains(active.toLowerCase(Locale.ROOT));
    return isAmong(active, takes) || part && isAmong("three-way", takes);
  }

  private static boolean isAmong(String active, List<String> names) {
    return names.stream().anyMatch(active::equalsIgnoreCase);
  }

  private String lists() {
    List<String> takes = grass.texts("tolerates");
    List<String> hurt = grass.texts("hurt_by");
    String first = takes.isEmpty() ? "" : " usually takes " + String.join(", ", takes);
    String then = hurt.isEmpty() ? "" : (first.isEmpty() ? "" : "; it") + " is hurt by ";
    return capital(grass.text("name")) + first + then + String.join(", ", hurt) + ".";
  }

  private static String capital(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
