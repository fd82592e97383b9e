package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import plainsward.reply.Caution;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** Whether what is put down works on weeds that are up or before they are: it decides on water. */
public enum ProductKind {
  /** It works on weeds that are up, through the leaf; taken where nothing tells. */
  POST,
  /** It works in the soil, before weeds are up. */
  PRE;

  private static final String PREVENTER = "pre-emergent";

  /**
   * PRE where all that is named are preventers, in the turn, else on the label in hand, else
   * before; in doubt POST.
   */
  static ProductKind of(Request request) {
    List<String> named = named(request);
    for (String name : named) {
      if (!isPreventer(name)) {
        return POST;
      }
    }
    return named.isEmpty() ? POST : PRE;
  }

  private static List<String> named(Request request) {
    boolean now = request.turn().has("product") || request.turn().has("active");
    List<String> named = new ArrayList<>();
    if (!now && request.has("label_active")) {
      add(request, "label_active", named);
      return named;
    }
    for (String role : List.of("product", "active")) {
      if (!now || request.turn().has(role)) {
        add(request, role, named);
      }
    }
    return named;
  }

  private static void add(Request request, String role, List<String> names) {
    for (Known known : request.all(role)) {
      names.add(known.fact().word().orElse(""));
    }
  }

  /** A kind that is one, or an active ingredient that works in the soil alone or is sold as one. */
  private static boolean isPreventer(String name) {
    if (name.equals(PREVENTER)) {
      return true;
    }
    for (Row row : Rows.of("actives")) {
      if (row.text("id").equals(name) || row.text("name").equals(name)) {
        return row.text("when").equals("pre") || sold().contains(row.text("name"));
      }
    }
    return false;
  }

  private static List<String> sold() {
    for (Row row : Rows.of("kinds")) {
      if (row.text("id").equals(PREVENTER)) {
        return row.texts("actives");
      }
    }
    return List.of();
  }

  /** Whether a reply has a caution that is another one for a preventer. */
  public static boolean concerns(Reply reply) {
    for (Caution caution : reply.cautions()) {
      if (Cautions.ofPreventer(caution.id()).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** The reply with the cautions as they are for what is spoken of. */
  public static Reply cautioned(Reply reply, Request request) {
    if (of(request) == POST) {
      return reply;
    }
    ReplyBuilder made = ReplyBuilder.from(reply);
    for (Caution caution : reply.cautions()) {
      made.cautionInstead(Cautions.ofPreventer(caution.id()).orElse(caution));
    }
    return made.build();
  }
}
