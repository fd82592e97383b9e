package plainsward.records;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** A shelf that nothing remembers when the program ends. */
final class MemoryShelf<T> implements Shelf<T> {
  private final Map<String, T> things = new TreeMap<>();
  private final Function<T, String> name;

  MemoryShelf(Function<T, String> name) {
    this.name = name;
  }

  @Override
  public List<T> all() {
    return List.copyOf(things.values());
  }

  @Override
  public Optional<T> find(String wanted) {
    return Optional.ofNullable(things.get(Names.key(wanted)));
  }

  @Override
  public void put(T thing) {
    things.put(Names.key(name.apply(thing)), thing);
  }

  @Override
  public boolean remove(String unwanted) {
    return things.remove(Names.key(unwanted)) != null;
  }

  @Override
  public List<String> problems() {
    return List.of();
  }
}
