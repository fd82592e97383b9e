package plainsward.terminal;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plainsward.reply.Assumed;
import plainsward.reply.Caution;
import plainsward.reply.DayHours;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.Milestone;
import plainsward.reply.NoteLink;
import plainsward.reply.Piece;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.reply.Sketches;
import plainsward.reply.Understood;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Replies made by hand, one of every shape that a screen has to show. */
final class SampleReplies {
  private static final String OUNCES = "[foz_us]";
  private static final String GALLONS = "[gal_us]";
  private static final Caution LABEL =
      new Caution("read-label", "Check the figure against your own label before you pour.");

  private SampleReplies() {}

  /** Two full tanks and a half one, with a wetting agent. */
  static Reply mix() {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("mix")
        .headline(
            "Use 7.5 fl oz in all: 3 fl oz in each of two 2 gal fills, 1.5 fl oz in the last.")
        .figure(Figure.of("product_total", Quantity.of("7.5", OUNCES), "7.5 fl oz"))
        .figure(Figure.of("spray_total", Quantity.of("5", GALLONS), "5 gal"))
        .figure(Figure.of("fills", Quantity.of("3", "1"), "3"))
        .figure(Figure.of("product_per_fill", Quantity.of("3", OUNCES), "3 fl oz"))
        .figure(Figure.of("last_fill", Quantity.of("1", GALLONS), "1 gal"))
        .figure(Figure.of("product_last_fill", Quantity.of("1.5", OUNCES), "1.5 fl oz"))
        .figure(Figure.of("area_per_fill", Quantity.of("2000", "[sft_i]"), "2,000 sq ft"))
        .figure(Figure.of("adjuvant_per_fill", Quantity.of("0.7", OUNCES), "0.7 fl oz"))
        .figure(Figure.of("adjuvant_last_fill", Quantity.of("0.35", OUNCES), "0.35 fl oz"))
        .work("1.5 fl oz per 1,000 sq ft × 5,000 sq ft = 7.5 fl oz")
        .work("5 gal ÷ 2 gal = 2.5 → 3 loads")
        .understood(
            List.of(
                amount("area", "5000", "[sft_i]", "5,000 sq ft", "saved"),
                amount("tank", "2", GALLONS, "2 gal", "question")))
        .assumed(
            new Assumed(
                "spray_rate",
                Quantity.of("1", "[gal_us]/(1000.[sft_i])"),
                "usual for hand-held spraying."))
        .caution(LABEL)
        .note(new NoteLink("mixing-order", "What goes into the tank first"))
        .suggest("How long do I keep the dog off?")
        .build();
  }

  /** A range off a label and a third that no decimal ends. */
  static Reply range() {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("strength")
        .headline("Use 1 to 2 fl oz.")
        .figure(
            Figure.of(
                "product_total",
                Quantity.of("1", OUNCES),
                Quantity.of("2", OUNCES),
                "1 to 2 fl oz"))
        .figure(Figure.of("spray_total", Quantity.of(Ratio.of(4, 3), GALLONS), "1.33 gal"))
        .caution(LABEL)
        .build();
  }

  /** A date and a word. */
  static Reply dates() {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("repeat")
        .headline("Not before May 31.")
        .figure(Figure.of("earliest", LocalDate.of(2026, 5, 31), "Sunday, May 31, 2026"))
        .figure(Figure.of("verdict", "wait", "wait"))
        .understood(
            List.of(
                word("grass", "tall fescue", "my fescue"),
                word("last_applied", "2026-05-01", "yesterday")))
        .build();
  }

  /** A lawn of pieces in several shapes. */
  static Reply lawn() {
    List<Piece> pieces =
        List.of(
            piece("rectangle", false, "60 by 75 ft", "60", "75"),
            piece("rectangle", true, "20 by 30 ft", "20", "30"),
            piece("circle", false, "a circle 24 ft across", "24"),
            piece("triangle", false, "a triangle 30 by 40 by 50 ft", "30", "40", "50"),
            new Piece(
                "area",
                List.of(),
                Optional.of(Quantity.of("100", "m2")),
                false,
                "100 m² of strip"));
    return new ReplyBuilder(Kind.ANSWER)
        .topic("measure")
        .headline("That is 6,028 sq ft of ground.")
        .sketch(Sketches.ofPieces(pieces))
        .build();
  }

  private static Piece piece(String shape, boolean isLeftOut, String said, String... sides) {
    List<Quantity> lengths = Arrays.stream(sides).map(side -> Quantity.of(side, "[ft_i]")).toList();
    return new Piece(shape, lengths, Optional.empty(), isLeftOut, said);
  }

  /** The days after a spraying. */
  static Reply days() {
    LocalDate sprayed = LocalDate.of(2026, 5, 1);
    return new ReplyBuilder(Kind.ANSWER)
        .topic("repeat")
        .headline("Not before May 31.")
        .sketch(
            Sketches.ofDays(
                sprayed,
                List.of(
                    new Milestone(sprayed, "S", "sprayed"),
                    new Milestone(sprayed, "D", "keep off until it is dry"),
                    new Milestone(sprayed.plusDays(2), "M", "you may mow"),
                    new Milestone(sprayed.plusDays(14), "L", "look again at the weeds"),
                    new Milestone(sprayed.plusDays(30), "A", "you may spray again"))))
        .build();
  }

  /** The hours of a hot day. */
  static Reply hours() {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("weather")
        .headline("No: don't spray now.")
        .sketch(
            Sketches.ofHours(
                List.of(
                    new DayHours(5, 9, "wait", "dew on the leaves"),
                    new DayHours(9, 12, "go", "dry leaves, still cool"),
                    new DayHours(12, 18, "no", "heat and wind are at their most"))))
        .build();
  }

  /** One question back. */
  static Reply ask() {
    return new ReplyBuilder(Kind.ASK)
        .topic("mix")
        .headline("How big is the lawn?")
        .need("area")
        .understood(
            List.of(amount("label_rate", "1.5", "[foz_us]/(1000.[sft_i])", "1.5/k", "earlier")))
        .build();
  }

  /** Somebody was splashed. */
  static Reply emergency() {
    ReplyBuilder reply =
        new ReplyBuilder(Kind.EMERGENCY)
            .topic("exposure")
            .headline("Rinse the eye now with gently running water for 15 to 20 minutes.")
            .say("Then call. Have the label in your hand.");
    for (int i = 1; i <= 5; i++) {
      reply.caution(new Caution("first-aid-" + i, "Step " + i + " matters."));
    }
    return reply.build();
  }

  /** More than a screen holds, in scripts of every width. */
  static Reply tooLong() {
    ReplyBuilder reply =
        new ReplyBuilder(Kind.ANSWER)
            .topic("identify")
            .headline("It is probably ground ivy (カキドオシ), a creeping mint.");
    for (int i = 1; i <= 12; i++) {
      reply.say(
          "Sign "
              + i
              + ": round leaves with scalloped edges on square stems that root where they touch.");
      reply.work("step " + i + " of a long sum × 2 = " + 2 * i);
      reply.caution(new Caution("caution-" + i, "Mind the thing with number " + i + "."));
    }
    return reply.suggest("What kills it?").build();
  }

  /** Data that means harm to a terminal. */
  static Reply hostile() {
    String bad = "a\u001b[2Jb\u202ec\u0007d\r\ne\u009b31mf\ud800g\u001b]0;title\u0007h";
    return new ReplyBuilder(Kind.ANSWER)
        .topic("mix")
        .headline(bad)
        .say(bad)
        .figure(Figure.of("product_total", Quantity.of("1", OUNCES), bad))
        .work(bad)
        .understood(List.of(word("weed", bad, bad)))
        .caution(new Caution("read-label", bad))
        .note(new NoteLink("n", bad))
        .suggest(bad)
        .build();
  }

  static Understood amount(String name, String value, String unit, String said, String from) {
    return new Understood(
        name,
        Optional.of(Quantity.of(value, unit)),
        Optional.empty(),
        Optional.empty(),
        said,
        from);
  }

  private static Understood word(String name, String word, String said) {
    return new Understood(
        name, Optional.empty(), Optional.empty(), Optional.of(word), said, "question");
  }
}
