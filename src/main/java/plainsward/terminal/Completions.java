package plainsward.terminal;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Completions of the options for the usual shells, as scripts. */
final class Completions {
  private final List<Option> options = Option.all().stream().filter(Option::isNamed).toList();

  String bash() {
    return """
        # Completions of plainsward's options for bash.
        _plainsward() {
          local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
          case $before in
        %s
            *) COMPREPLY=($(compgen -W '%s' -- "$word")) ;;
          esac
        }
        complete -F _plainsward plainsward
        """
        .formatted(
            lines(o -> o.takes().isEmpty() ? "" : "    " + o.name() + ") " + bashValue(o) + " ;;"),
            options.stream().map(Option::name).collect(Collectors.joining(" ")));
  }

  private static String bashValue(Option option) {
    String how =
        switch (option.value()) {
          case "DIR" -> "-d";
          case "FILE" -> "-f";
          default -> "-W '" + String.join(" ", option.choices()) + "'";
        };
    return "COMPREPLY=($(compgen " + how + " -- \"$word\"))";
  }

  String zsh() {
    return """
        #compdef plainsward
        # Completions of plainsward's options for zsh.
        _arguments \\
        %s
          '*:question:'
        """
        .formatted(
            lines(o -> "  '" + o.name() + "[" + quoted(o.does()) + "]" + zshValue(o) + "' \\"));
  }

  private static String zshValue(Option option) {
    String optional = option.takes().startsWith("[") ? "::" : ":";
    return switch (option.value()) {
      case "" -> "";
      case "DIR" -> optional + "folder:_files -/";
      case "FILE" -> optional + "file:_files";
      default ->
          option.choices().isEmpty()
              ? optional + option.value() + ":"
              : optional + "choice:(" + String.join(" ", option.choices()) + ")";
    };
  }

  String fish() {
    return "# Completions of plainsward's options for fish.\n"
        + lines(
            o ->
                "complete -c plainsward -l "
                    + o.name().substring(2)
                    + fishValue(o)
                    + " -d '"
                    + quoted(o.does())
                    + "'")
        + "\n";
  }

  private static String fishValue(Option option) {
    return switch (option.value()) {
      case "" -> " -f";
      case "DIR" -> " -x -a '(__fish_complete_directories)'";
      case "FILE" -> " -F";
      default -> " -x -a '" + String.join(" ", option.choices()) + "'";
    };
  }

  private String lines(Function<Option, String> line) {
    return options.stream()
        .map(line)
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  /** In single quotes a single quote can't stand, and zsh reads brackets. */
  private static String quoted(String text) {
    return text.replace("'", "’").replace("[", "(").replace("]", ")").replace(":", ";");
  }
}
