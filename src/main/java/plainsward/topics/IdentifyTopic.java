package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plainsward.handbook.Note;
import plainsward.reading.Denials;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.trade.Row;

/** Which weed it is by its looks, what to look at next, and honestly unsure. */
public final class IdentifyTopic implements Topic {
  private static final Set<String> TELLING =
      Set.of("difference", "apart", "explain", "describe", "describes", "sample", "photo");
  private static final double CLEAR = 2.2;
  private static final double MOST_CLEAR = 6;
  private static final double LEAST = 1.6;
  private static final double NOTE_ALONE = 0.6;
  private static final double NOTE_BESIDE = 0.5;
  private static final double NOTE_SURE = 0.93;

  @Override
  public String code() {
    return "identify";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "identify").alsoTopic("choose");
    List<Row> named =
        request.turn().of("weed").stream()
            .filter(f -> !Denials.areBefore(request.turn().tokens(), f.at()))
            .flatMap(f -> WeedBook.shipped().weed(f.word().orElse("")).stream())
            .distinct()
            .toList();
    if (named.size() >= 2) {
      return apart(request, sheet, named);
    }
    List<WeedBook.Match> matches = WeedBook.shipped().matches(request.turn().tokens());
    if (matches.isEmpty() || !isEnough(matches.get(0))) {
      return unclear(request, sheet, named);
    }
    Optional<Note> sure = Notes.best(request, request.turn().text(), Set.of(), NOTE_SURE);
    WeedBook.Match best = byNote(matches, sure).get(0);
    if (sure.filter(note -> isAgainst(note, best.weed())).isPresent()) {
      Notes.tell(sure.get(), sheet);
      return sheet.answer(sure.get().answer());
    }
    return likely(request, sheet, byNote(matches, sure));
  }

  /** Of the weeds that fit, the one whose own note of its looks plainly fits goes first. */
  private static List<WeedBook.Match> byNote(List<WeedBook.Match> matches, Optional<Note> note) {
    if (note.filter(IdentifyTopic::isOfOneWeed).isEmpty()) {
      return matches;
    }
    List<WeedBook.Match> all =
        new ArrayList<>(
            matches.stream()
                .filter(m -> names(m.weed()).anyMatch(inLower(note.get().title())::contains))
                .limit(1)
                .toList());
    matches.stream().filter(m -> !all.contains(m)).forEach(all::add);
    return all;
  }

  /** Whether a note tells the looks of one weed, as the notes with such ids do. */
  private static boolean isOfOneWeed(Note note) {
    return note.id().startsWith("recognize-");
  }

  /** Whether a note that tells several weeds apart plainly fits and knows nothing of this one. */
  private static boolean isAgainst(Note note, Row weed) {
    return note.topics().get(0).equals("identify") && !isOfOneWeed(note) && !isNamed(weed, note);
  }

  private static boolean isNamed(Row weed, Note note) {
    String told = inLower(note.title() + note.answer() + note.body());
    return names(weed).anyMatch(told::contains);
  }

  private static Stream<String> names(Row weed) {
    return Stream.concat(Stream.of(weed.text("name")), weed.texts("nicknames").stream())
        .map(IdentifyTopic::inLower);
  }

  private static String inLower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  /** The weed that the words fit best, by its id; nothing where they fit none well. */
  public static Optional<String> likeliest(List<Token> words) {
    return WeedBook.shipped().matches(words).stream()
        .findFirst()
        .filter(IdentifyTopic::isEnough)
        .map(m -> m.weed().text("id"));
  }

  private static boolean isEnough(WeedBook.Match match) {
    return match.score() >= LEAST && (match.traits().size() > 1 || match.score() >= CLEAR);
  }

  private static Reply unclear(Request request, Sheet sheet, List<Row> named) {
    Optional<Note> note =
        Notes.best(request, request.turn().text(), Set.of("identify"), NOTE_ALONE);
    boolean looks =
        !WeedBook.shipped().matches(request.turn().tokens()).isEmpty()
            || !named.isEmpty()
            || request.turn().hasWord(TELLING);
    if (note.isPresent() && looks) {
      Notes.tell(note.get(), sheet);
      return sheet.answer(note.get().answer());
    }
    if (named.size() == 1) {
      Row weed = named.get(0);
      sheet.say(weed.text("tell"));
      return sheet.answer("To be sure of " + weed.text("name") + ": " + weed.text("tell"));
    }
    return sheet.ask(
        "What do its leaves look like (shape, how many, how they sit), and is there a flower, a "
            + "milky sap or a smell?",
        "weed");
  }

  private static Reply likely(Request request, Sheet sheet, List<WeedBook.Match> matches) {
    WeedBook.Match best = matches.get(0);
    sheet.work("It fits " + best.weed().text("name") + " by: " + String.join(", ", best.traits()));
    sheet.say(best.weed().text("tell"));
    List<String> others =
        matches.stream()
            .skip(1)
            .filter(m -> m.score() >= best.score() * 0.7)
            .limit(2)
            .map(m -> m.weed().text("name") + " (" + m.weed().text("tell") + ")")
            .toList();
    if (!others.isEmpty()) {
      sheet.say("It could also be " + String.join(" or ", others));
    }
    Notes.best(request, request.turn().text(), Set.of("identify"), NOTE_BESIDE)
        .filter(n -> isNamed(best.weed(), n))
        .ifPresent(n -> Notes.tell(n, sheet));
    sheet.suggest("What gets rid of " + best.weed().text("name") + " in my grass?");
    boolean clear = others.isEmpty() && best.score() >= MOST_CLEAR;
    String sure = clear ? "That is most likely " : "That looks most like ";
    return sheet.answer(sure + name(best.weed()) + ".");
  }

  private static String name(Row weed) {
    List<String> nicknames = weed.texts("nicknames");
    String nickname = nicknames.isEmpty() ? "" : ", also called " + nicknames.get(0);
    return weed.text("name") + " (" + weed.text("botanical") + nickname + ")";
  }

  private static Reply apart(Request request, Sheet sheet, List<Row> named) {
    Optional<Note> note = Notes.best(request, request.turn().text(), Set.of("identify"), 0.3);
    note.ifPresent(n -> Notes.tell(n, sheet));
    List<WeedBook.Match> matches = WeedBook.shipped().matches(request.turn().tokens());
    named.forEach(weed -> sheet.say(capital(weed.text("name")) + ": " + weed.text("tell")));
    Optional<WeedBook.Match> fits =
        matches.stream().filter(m -> named.contains(m.weed())).findFirst();
    String line =
        note.map(Note::answer)
            .orElse(
                "Tell "
                    + named.get(0).text("name")
                    + " from "
                    + named.get(1).text("name")
                    + " by these:");
    return sheet.answer(
        fits.filter(m -> m.score() >= CLEAR)
            .map(m -> "From what you say, more likely " + m.weed().text("name") + ". " + line)
            .orElse(line));
  }

  private static String capital(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
