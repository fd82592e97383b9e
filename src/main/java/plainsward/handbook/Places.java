package plainsward.handbook;

/**
 * Some documents, and where each stands among them, told at once. The room for it is the thread's
 * and is never cleared (a sparse set after Briggs and Torczon, "An efficient representation for
 * sparse sets", 1993), so only the one made last by a thread may be asked.
 */
final class Places {
  private static final ThreadLocal<int[]> ROOM = new ThreadLocal<>();

  private final int[] documents;
  private final int[] places;

  /**
   * The places of some documents.
   *
   * @param documents the documents, in rising order
   * @param size how many documents there are in all
   */
  Places(int[] documents, int size) {
    this.documents = documents;
    int[] room = ROOM.get();
    if (room == null || room.length < size) {
      room = new int[size];
      ROOM.set(room);
    }
    this.places = room;
    for (int i = 0; i < documents.length; i++) {
      room[documents[i]] = i;
    }
  }

  /** The documents, in rising order. */
  int[] documents() {
    return documents;
  }

  /** How many they are. */
  int count() {
    return documents.length;
  }

  /** Where a document stands among them, or -1. */
  int of(int document) {
    int place = places[document];
    return place < documents.length && documents[place] == document ? place : -1;
  }
}
