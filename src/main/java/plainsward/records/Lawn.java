package plainsward.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * A piece of ground with the user's own name for it. What is not known of trees, water and
 * vegetables is empty, which is not the same as no.
 *
 * @param name the user's own name for it
 * @param area its area; where pieces are known it is theirs together
 * @param pieces the pieces that it is made of
 * @param grass the grass
 * @param notes anything else
 * @param trees whether trees or shrubs root in it
 * @param waterNear whether a pond, stream, well or drain is near
 * @param vegetablesNear whether food plants are near
 */
public record Lawn(
    String name,
    Optional<Quantity> area,
    List<Piece> pieces,
    Optional<String> grass,
    Optional<String> notes,
    Optional<Boolean> trees,
    Optional<Boolean> waterNear,
    Optional<Boolean> vegetablesNear) {

  /** Tidies the texts and adds up the pieces; an unfit name is refused. */
  public Lawn {
    name = Names.checked("lawn", name);
    pieces = List.copyOf(pieces);
    area = pieces.isEmpty() ? area : pieces.stream().map(Piece::area).reduce(Quantity::plus);
    grass = Names.remark(grass);
    notes = Names.remark(notes);
  }

  /**
   * One piece of a lawn.
   *
   * @param name what it is called, such as {@code strip by the walk}
   * @param area its area
   */
  public record Piece(String name, Quantity area) {

    /** An unfit name is refused. */
    public Piece {
      name = Names.checked("piece", name);
    }
  }

  /** A lawn of which only the name is known. */
  public static Lawn named(String name) {
    return new Lawn(
        name,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The lawn with one area instead of what it had. */
  public Lawn withArea(Quantity whole) {
    return new Lawn(
        name, Optional.of(whole), List.of(), grass, notes, trees, waterNear, vegetablesNear);
  }

  /** The lawn with one more piece; a piece of the same name gives way. */
  public Lawn withPiece(String piece, Quantity its) {
    List<Piece> all = new ArrayList<>(pieces);
    all.removeIf(p -> Names.key(p.name()).equals(Names.key(piece)));
    all.add(new Piece(piece, its));
    return new Lawn(name, area, all, grass, notes, trees, waterNear, vegetablesNear);
  }

  /** The lawn with a grass. */
  public Lawn withGrass(String its) {
    return new Lawn(name, area, pieces, Optional.of(its), notes, trees, waterNear, vegetablesNear);
  }

  /** The lawn with notes. */
  public Lawn withNotes(String text) {
    return new Lawn(name, area, pieces, grass, Optional.of(text), trees, waterNear, vegetablesNear);
  }

  /** The lawn with what is known of trees. */
  public Lawn withTrees(boolean has) {
    return new Lawn(name, area, pieces, grass, notes, Optional.of(has), waterNear, vegetablesNear);
  }

  /** The lawn with what is known of water near. */
  public Lawn withWaterNear(boolean is) {
    return new Lawn(name, area, pieces, grass, notes, trees, Optional.of(is), vegetablesNear);
  }

  /** The lawn with what is known of food plants near. */
  public Lawn withVegetablesNear(boolean are) {
    return new Lawn(name, area, pieces, grass, notes, trees, waterNear, Optional.of(are));
  }
}
