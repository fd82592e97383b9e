package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.handbook.Note;
import plainsward.handbook.Search;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;

/** A topic that the handbook answers: the nearest note of its kind, told as it stands. */
public class NoteTopic implements Topic {
  private static final double ANOTHER_KIND = 0.75;
  private static final double NEAR = 0.45;
  private static final double OWN = 0.6;
  private static final int FRAGMENT = 6;

  /** What "when?" alone asks, in the words of the notes. */
  private static final String BEST_TIME = "best time of year to spray";

  /** The topics whose answer depends on the weed. */
  private static final Set<String> BY_WEED = Set.of("timing", "progress");

  private final String code;

  /** The topic of a code whose notes are told. */
  public NoteTopic(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Reply reply(Request request) {
    String weed = BY_WEED.contains(code) ? weedBefore(request) : "";
    String asked = request.says("bare-when") ? BEST_TIME : request.turn().text();
    return reply(request, asked + weed, NEAR);
  }

  /** A short question speaks of the weed that was spoken of before. */
  private static String weedBefore(Request request) {
    boolean fragment = request.turn().tokens().size() <= FRAGMENT && !request.turn().has("weed");
    return fragment
        ? request
            .get("weed")
            .flatMap(k -> WeedBook.shipped().weed(k.fact().word().orElse("")))
            .map(row -> " " + row.text("name"))
            .orElse("")
        : "";
  }

  /** The reply to a part of the message: it says less, so a note of another kind must be surer. */
  public Reply reply(Request request, String words) {
    return reply(request, words, ANOTHER_KIND);
  }

  /** The reply to some words, by the best note of any kind that is as sure as {@code another}. */
  Reply reply(Request request, String words, double another) {
    Sheet sheet = new Sheet(request, code);
    Optional<Note> found = Notes.of(request, words, code, another);
    Optional<Note> note = code.equals("progress") ? DeadYet.fitting(request, found) : found;
    if (note.isEmpty()) {
      return sheet.ask("Tell me a little more: what did you see, use or want to do?", "product");
    }
    return told(note.get(), sheet);
  }

  /** The nearest note of any kind, where one is near enough. */
  public static Optional<Reply> anywhere(Request request, String words, Set<String> prefer) {
    return Notes.best(request, words, prefer, NEAR)
        .map(note -> told(note, new Sheet(request, note.topics().get(0))));
  }

  /** The note that plainly answers the whole message, as sure as {@code least} or more. */
  public static Optional<Reply> plainly(Request request, double least) {
    return Notes.best(request, request.turn().text(), Set.of(), least)
        .map(note -> told(note, new Sheet(request, note.topics().get(0))));
  }

  /** The titles of the nearest notes that are as sure as {@code least}, at most so many. */
  public static List<String> near(Request request, double least, int most) {
    return request.asked(request.turn().text()).search(Search.first(most)).stream()
        .filter(hit -> hit.confidence() >= least)
        .map(hit -> hit.note().title())
        .toList();
  }

  /** A note of the user's own that plainly answers. */
  public static Optional<Reply> own(Request request) {
    return Notes.own(request, OWN)
        .map(note -> told(note, new Sheet(request, note.topics().get(0))));
  }

  /** What is said of a question outside the trade: the nearest note about such, or a sentence. */
  public static Reply outside(Request request) {
    Sheet sheet = new Sheet(request, "other");
    Optional<Note> note =
        Notes.best(request, request.turn().text(), Set.of("other"), 0.4)
            .filter(n -> n.topics().get(0).equals("other"));
    Optional<Note> ours =
        note.or(() -> Notes.best(request, request.turn().text(), Set.of(), ANOTHER_KIND));
    if (ours.isPresent()) {
      return told(ours.get(), sheet);
    }
    sheet.say(
        "I know lawn weeds, spraying and feeding. For the rest ask the extension service, or "
            + "whoever deals with such things.");
    return ReplyBuilder.from(sheet.answer("That is outside what I know."))
        .kind(Kind.UNSURE)
        .build();
  }

  private static Reply told(Note note, Sheet sheet) {
    Notes.tell(note, sheet);
    if (note.id().equals(DaySketch.HOURS_NOTE)) {
      sheet.sketch(DaySketch.hours(false));
    }
    Reply reply = sheet.answer(note.answer());
    return note.topics().get(0).equals("other")
        ? ReplyBuilder.from(reply).kind(Kind.UNSURE).build()
        : reply;
  }
}
