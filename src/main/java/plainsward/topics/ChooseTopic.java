package plainsward.topics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.handbook.Note;
import plainsward.reading.Denials;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** What sort of product for a weed, a grass and a season; the label has the last word. */
public final class ChooseTopic implements Topic {
  private static final Set<String> TREES =
      Set.of(
          "tree", "trees", "maple", "maples", "oak", "oaks", "birch", "pine", "elm", "redbud",
          "root", "roots");
  private static final Set<String> GROUPS = Set.of("group", "groups", "hrac", "wssa", "mode");
  private static final int FEW_WORDS = 9;
  private static final double NOTE_FITS = 0.5;
  private static final double PLAIN = 0.8;

  /** The same where it is asked when. */
  private static final double PLAIN_OF_TIME = 0.65;

  private static final Map<String, Row> ACTIVES = byId("actives");

  @Override
  public String code() {
    return "choose";
  }

  /** The row of an active ingredient. */
  static Optional<Row> active(String id) {
    return Optional.ofNullable(ACTIVES.get(id));
  }

  private static Map<String, Row> byId(String table) {
    Map<String, Row> all = new HashMap<>();
    Rows.of(table).forEach(row -> all.put(row.text("id"), row));
    return all;
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "choose");
    if (asksGroup(request)) {
      return group(request, sheet);
    }
    List<Row> weeds =
        request.all("weed").stream()
            .filter(k -> !isDenied(request, k))
            .flatMap(k -> WeedBook.shipped().weed(k.fact().word().orElse("")).stream())
            .distinct()
            .toList();
    if (weeds.isEmpty()) {
      return GrassVerdict.of(request, sheet).orElseGet(() -> inWords(request, sheet));
    }
    Optional<Note> wider = remedy(request).or(() -> wider(request));
    return wider.isPresent()
        ? told(request, sheet, wider.get(), verdict(request, weeds.get(0)))
        : forWeed(request, sheet, weeds);
  }

  /**
   * The note that plainly answers more than which product the weed takes, such as a remedy, a wait
   * or a mistake with it.
   */
  private static Optional<Note> wider(Request request) {
    double least = request.turn().asks("timing") ? PLAIN_OF_TIME : PLAIN;
    return Notes.best(request, request.turn().text(), Set.of(), least)
        .filter(note -> !note.topics().get(0).equals("identify"))
        .filter(note -> !WeedBook.shipped().isNamedIn(note.title()) || isOfTime(note));
  }

  private static boolean isOfTime(Note note) {
    return note.topics().get(0).equals("timing");
  }

  /** A home remedy does to one weed what it does to another: its own note answers. */
  private static Optional<Note> remedy(Request request) {
    if (!request.says("remedy")) {
      return Optional.empty();
    }
    StringBuilder words = new StringBuilder();
    for (Token token : request.turn().tokens()) {
      words.append(token.tag().equals("weed") ? "weeds" : token.said()).append(' ');
    }
    return Notes.best(request, words.toString(), Set.of("choose"), NOTE_FITS);
  }

  private static Reply told(Request request, Sheet sheet, Note note, String verdict) {
    Notes.tell(note, sheet);
    tree(request, sheet);
    GrassWords.caution(request, sheet);
    return sheet.answer(verdict + note.answer());
  }

  /** "it is not crabgrass": what this turn says that it is not. */
  private static boolean isDenied(Request request, Known weed) {
    return request.turn().of("weed").contains(weed.fact())
        && Denials.areBefore(request.turn().tokens(), weed.fact().at());
  }

  private static boolean asksGroup(Request request) {
    return request.turn().has("active") && request.turn().hasWord(GROUPS);
  }

  /** The group numbers of the ingredients named, and whether changing between them helps. */
  private static Reply group(Request request, Sheet sheet) {
    List<String> told = new ArrayList<>();
    List<String> groups = new ArrayList<>();
    for (Known known : request.all("active")) {
      Row row = ACTIVES.get(known.fact().word().orElse(""));
      if (row != null && !told.contains(line(row))) {
        told.add(line(row));
        groups.add(row.text("group"));
      }
    }
    if (told.isEmpty()) {
      return inWords(request, sheet);
    }
    long kinds = groups.stream().distinct().count();
    sheet.caution("resistance");
    if (told.size() > 1) {
      sheet.say(
          kinds == 1
              ? "They are all in the same group, so changing between them does not change the way "
                  + "they work."
              : "They are in different groups, so changing between them helps against resistance.");
    }
    return sheet.answer(String.join(". ", told) + ".");
  }

  private static String line(Row active) {
    String name = active.text("name");
    return Character.toUpperCase(name.charAt(0))
        + name.substring(1)
        + " is in group "
        + active.text("group")
        + " (WSSA/HRAC), "
        + active.text("site");
  }

  private static Reply inWords(Request request, Sheet sheet) {
    String words = request.turn().text();
    Optional<Note> plain = Notes.best(request, words, Set.of(), PLAIN);
    Optional<Note> note =
        plain.isPresent() || isBare(request)
            ? plain
            : Notes.best(request, words, Set.of("choose"), NOTE_FITS);
    if (note.isPresent()) {
      return told(request, sheet, note.get(), "");
    }
    return sheet.ask(
        "Which weed is it, and what grass does it stand in? If you don't know, tell me its leaf, "
            + "flower and habit.",
        "weed",
        "grass");
  }

  /** "What do I spray on my lawn?" names neither weed nor product nor grass. */
  private static boolean isBare(Request request) {
    boolean named =
        List.of("weed", "grass", "active", "product", "adjuvant").stream()
            .anyMatch(request.turn()::has);
    return !named && request.turn().tokens().size() <= FEW_WORDS;
  }

  private static Reply forWeed(Request request, Sheet sheet, List<Row> weeds) {
    Row weed = weeds.get(0);
    Optional<Note> note =
        Notes.best(request, request.turn().text(), Set.of("choose"), 0.3)
            .filter(n -> isAbout(n, weed));
    sheet.say(way(weed));
    note.ifPresent(n -> Notes.tell(n, sheet));
    if (note.isEmpty()) {
      sheet.say("Best time: " + weed.text("best_time") + ". " + weed.text("why"));
    }
    for (Row other : weeds.subList(1, weeds.size())) {
      sheet.say(capital(other.text("name")) + ": " + products(other) + ".");
    }
    tree(request, sheet);
    grass(request, sheet);
    sheet.caution("read-label");
    sheet.say(
        "The label must list your weed and your grass; look under \"Sites\" and \"Weeds controlled\".");
    String first =
        note.map(Note::answer).orElse("For " + weed.text("name") + ": " + products(weed) + ".");
    return sheet.answer(taken(request, weed) + verdict(request, weed) + first);
  }

  /** A weed known by its looks alone is named before anything is said of it. */
  private static String taken(Request request, Row weed) {
    boolean byLooks = request.get("weed").map(k -> k.leavesOpen("likely")).orElse(false);
    return byLooks ? "Taking it to be " + weed.text("name") + ". " : "";
  }

  private static boolean isAbout(Note note, Row weed) {
    String words =
        (note.title() + " " + String.join(" ", note.about())).toLowerCase(java.util.Locale.ROOT);
    List<String> names = new ArrayList<>(weed.texts("nicknames"));
    names.add(weed.text("name"));
    return names.stream().anyMatch(n -> words.contains(n.toLowerCase(java.util.Locale.ROOT)));
  }

  /** The three-way's verdict, where one was asked about. */
  private static String verdict(Request request, Row weed) {
    boolean asked =
        request.turn().of("product").stream()
            .anyMatch(f -> f.word().orElse("").matches("three-way|broadleaf.*"));
    if (!asked) {
      return "";
    }
    return switch (weed.optional("three_way").orElse("")) {
      case "good" -> "Yes, a three-way usually handles it. ";
      case "fair" -> "A three-way does part of the work; expect a second round. ";
      case "poor" -> "A three-way alone is usually not enough. ";
      case "no" -> "No, a three-way does not control it: you need a different product. ";
      default -> "";
    };
  }

  private static String way(Row weed) {
    return capital(weed.text("name"))
        + " ("
        + weed.text("botanical")
        + "): "
        + String.join(", ", weed.texts("control"))
        + ". Usual active ingredients: "
        + actives(weed)
        + ".";
  }

  private static String products(Row weed) {
    String kind = weed.texts("control").isEmpty() ? "pull" : weed.texts("control").get(0);
    return kind + ", such as " + actives(weed);
  }

  private static String actives(Row weed) {
    List<String> names = weed.texts("actives");
    return names.isEmpty() ? "see the label" : String.join(", ", names);
  }

  /** What moves in the soil is kept away from trees. */
  private static void tree(Request request, Sheet sheet) {
    boolean tree = request.turn().hasWord(TREES);
    boolean moves =
        request.all("active").stream()
            .map(k -> ACTIVES.get(k.fact().word().orElse("")))
            .anyMatch(row -> row != null && row.flag("tree_roots"));
    if (tree && moves) {
      sheet.caution("tree-roots");
      sheet.say(
          "Not over tree roots: it moves in the soil, and roots reach at least as far out as the "
              + "tree is tall. Use a product without it there if the label allows, or pull by hand.");
    }
  }

  private static void grass(Request request, Sheet sheet) {
    GrassWords.named(request)
        .ifPresent(
            row -> {
              boolean tender = row.flag("tender");
              List<String> hurt = row.texts("hurt_by");
              if (tender || !hurt.isEmpty()) {
                sheet.caution("grass-type");
                sheet.say(
                    capital(row.text("name"))
                        + (tender ? " is easily hurt" : " is hurt by some")
                        + (hurt.isEmpty() ? "." : ": not with " + String.join(", ", hurt) + "."));
              }
            });
  }

  private static String capital(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
