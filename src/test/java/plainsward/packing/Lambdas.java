package plainsward.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntSupplier;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;

/** Every kind of lambda that javac makes, each told as a text. */
final class Lambdas implements Supplier<String> {
  private final String own = "own";

  private record Pair(int number, String text, double share, long[] many) {}

  private record Inner(String said) {
    Supplier<String> later() {
      return () -> said + secret();
    }
  }

  private static String secret() {
    return "!";
  }

  @Override
  public String get() {
    List<String> told = new ArrayList<>();
    constant(told);
    captured(told, 7, 8L, 0.5, 'c', true);
    converted(told);
    references(told);
    records(told);
    return String.join("\n", told);
  }

  private void constant(List<String> told) {
    Supplier<String> nothing = () -> "nothing";
    told.add(nothing.get());
    Supplier<String> mine = () -> own;
    told.add(mine.get());
  }

  private void captured(
      List<String> told, int number, long large, double share, char letter, boolean truth) {
    Function<String, String> all =
        more -> more + own + number + large + share + letter + truth + told.size();
    told.add(all.apply("with "));
  }

  private static void converted(List<String> told) {
    ToIntFunction<Integer> unboxed = n -> n;
    ToLongFunction<Integer> widened = Integer::intValue;
    ToDoubleFunction<Long> wide = Long::longValue;
    Function<Integer, Integer> boxed = n -> n + 1;
    IntFunction<Object> object = Integer::valueOf;
    LongFunction<Double> through = Double::valueOf;
    Function<Integer, Long> both = Integer::longValue;
    told.add(unboxed.applyAsInt(1) + " " + widened.applyAsLong(2) + " " + wide.applyAsDouble(3L));
    told.add(boxed.apply(4) + " " + object.apply(5) + " " + through.apply(6) + " " + both.apply(7));
    List<String> list = new ArrayList<>();
    Runnable dropped = () -> list.add("kept");
    dropped.run();
    told.forEach(list::add);
    told.add(list.toString());
  }

  private void references(List<String> told) {
    Supplier<List<String>> made = ArrayList::new;
    IntFunction<String[]> array = String[]::new;
    BiFunction<String, String, Boolean> same = String::equals;
    UnaryOperator<String> mine = this::marked;
    IntSupplier length = own::length;
    Function<CharSequence, Integer> unowned = CharSequence::length;
    Function<String, Inner> record = Inner::new;
    told.add(made.get() + " " + array.apply(3).length + " " + same.apply("a", "a"));
    told.add(mine.apply("me") + " " + length.getAsInt() + " " + unowned.apply("four"));
    told.add(record.apply("inner").later().get());
  }

  private String marked(String text) {
    return "<" + text + own + ">";
  }

  private static void records(List<String> told) {
    long[] many = {1};
    Pair one = new Pair(1, "a", 0.5, many);
    List<Object> others =
        List.of(
            new Pair(1, "a", 0.5, many),
            new Pair(2, "a", 0.5, many),
            new Pair(1, null, 0.5, many),
            new Pair(1, "a", -0.5, many),
            new Pair(1, "a", 0.5, new long[] {1}),
            one,
            "a");
    for (Object other : others) {
      told.add(one.equals(other) + " " + other.equals(one));
    }
    told.add("" + new Pair(0, "", 0.0, null).equals(new Pair(0, "", -0.0, null)));
    told.add("" + new Pair(1, null, -0.0, null).hashCode());
    told.add("" + new Inner("x").hashCode());
  }
}
