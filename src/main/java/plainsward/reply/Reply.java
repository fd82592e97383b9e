package plainsward.reply;

import java.util.List;
import java.util.Optional;

/**
 * One reply. All lists are there, possibly empty.
 *
 * @param kind which of the six kinds
 * @param topics what it is about, by the contract's codes
 * @param headline one sentence, the number first
 * @param body the sentences that a person reads after the headline, a paragraph each
 * @param figures what was worked out
 * @param working the sum, a line a step
 * @param assumed what was taken as given
 * @param needs what is asked for, by the contract's names
 * @param understood what was read, and from where
 * @param cautions the cautions that matter, first things first
 * @param notes the handbook notes that it rests on
 * @param suggest next questions worth asking
 * @param sketches what there is to be drawn
 * @param telling how much of it is to be told
 */
public record Reply(
    Kind kind,
    List<String> topics,
    String headline,
    List<String> body,
    List<Figure> figures,
    List<String> working,
    List<Assumed> assumed,
    List<String> needs,
    List<Understood> understood,
    List<Caution> cautions,
    List<NoteLink> notes,
    List<String> suggest,
    Sketches sketches,
    Telling telling) {

  /** Copies the lists, so that a reply never changes. */
  public Reply {
    topics = List.copyOf(topics);
    body = List.copyOf(body);
    figures = List.copyOf(figures);
    working = List.copyOf(working);
    assumed = List.copyOf(assumed);
    needs = List.copyOf(needs);
    understood = List.copyOf(understood);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
    suggest = List.copyOf(suggest);
  }

  /** The first figure of this name. */
  public Optional<Figure> figure(String name) {
    for (Figure figure : figures) {
      if (figure.name().equals(name)) {
        return Optional.of(figure);
      }
    }
    return Optional.empty();
  }
}
