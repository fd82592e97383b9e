package plainsward.records;

/**
 * How one kind of thing stands in a file.
 *
 * @param <T> the kind of thing
 */
interface Codec<T> {
  /** The thing of a file's content; {@link FieldFault} where it is not as expected. */
  T read(Node node);

  /** The content of its file. */
  Tree tree(T thing);

  /** Its name. */
  String name(T thing);

  /** What a sentence calls the kind, such as {@code label}. */
  String kind();
}
