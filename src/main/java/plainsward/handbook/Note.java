package plainsward.handbook;

import java.util.List;

/**
 * A note of the handbook.
 *
 * @param id its file's name without the ending
 * @param title what it is about, as a heading
 * @param topics codes of the topics that it belongs to, the closest first
 * @param about words that people use for its matter
 * @param answer the answer in one or two sentences
 * @param cautions ids of the cautions that it carries
 * @param basis published sources, or the mark that there is none; never empty
 * @param questions ways in which people ask for it
 * @param body the text, without Markdown beyond paragraphs and lists
 */
public record Note(
    String id,
    String title,
    List<String> topics,
    List<String> about,
    String answer,
    List<String> cautions,
    List<String> basis,
    List<String> questions,
    String body) {

  /** Keeps its own copies of the lists. */
  public Note {
    topics = List.copyOf(topics);
    about = List.copyOf(about);
    cautions = List.copyOf(cautions);
    basis = List.copyOf(basis);
    questions = List.copyOf(questions);
  }
}
