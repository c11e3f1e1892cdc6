package guildwood.species.names;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.names.ScientificName.LowerRank;
import guildwood.species.names.ScientificName.Reserve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a scientific name as people write it, with or without authors, ranks, hybrid signs and cultivars. */
public final class NameReader {
  private static final int LONGEST = 300;

  /** Cultivar epithets stand in single quotes (ICNCP); people also write double ones. */
  private static final Pattern CULTIVAR = Pattern.compile("(?<=\\s)['‘’`\"“”„](\\S(?:.*?\\S)?)['’‘`\"”“](?=\\s|$)");

  private static final Pattern CV = Pattern.compile("\\s(?:cv|cultivar)\\.?\\s+(\\p{Lu}.*)$");
  private static final Pattern GROUP =
      Pattern.compile("(?<=\\s)\\(?((?:\\p{Lu}[\\p{L}'-]+\\s)+)(?:Group|Gp|grp\\.?)\\)?(?=\\s|$)");
  private static final Pattern GENUS = Pattern.compile("\\p{Lu}[\\p{Ll}ëï-]+");
  private static final Pattern SIGN_BEFORE = Pattern.compile("(?<=^|\\s)[×✕✖⨯](?=\\p{L})");

  private static final Pattern SPACES = Pattern.compile("\\s+");

  /** R writes names of columns with dots for spaces. */
  private static final Pattern DOTTED = Pattern.compile("[\\p{L}-]+(\\.[\\p{Ll}-]{2,})+");

  private static final Pattern CAPITAL = Pattern.compile("\\p{Lu}.*");
  private static final Pattern TIGHT_SIGN = Pattern.compile("x\\p{Lu}\\p{Ll}+");
  private static final Pattern INITIAL = Pattern.compile("\\p{Lu}\\.");
  private static final Pattern SOME_EPITHET = Pattern.compile("[\\p{Ll}-]{2,}");
  private static final Pattern SIGN_HYPHEN = Pattern.compile("[x×]-[\\p{Ll}-]+");
  private static final Pattern LOUD_EPITHET = Pattern.compile("^(\\p{L}+ )(\\p{Lu}{3,})(?=\\s|$)");
  private static final Pattern SMALL_START = Pattern.compile("^((?:[×x] )?)(?!x\\p{Lu})(\\p{Ll})");

  private NameReader() {}

  /** The name, or the finding that says why it cannot be one. Case, underscores and spare spaces do not matter. */
  public static Checked<ScientificName> read(String written) {
    String text = tidy(written);
    if (text.isEmpty()) {
      return Checked.refused(Finding.of("name.empty", "species"));
    }
    if (text.length() > LONGEST || !text.codePoints().anyMatch(Character::isLetter)) {
      return Checked.refused(Finding.of("name.unreadable", "species", text));
    }
    String cultivar = "";
    Matcher quoted = CULTIVAR.matcher(text);
    Matcher announced = CV.matcher(text);
    if (quoted.find()) {
      cultivar = quoted.group(1);
      text = (text.substring(0, quoted.start()) + text.substring(quoted.end())).strip();
    } else if (announced.find()) {
      cultivar = announced.group(1);
      text = text.substring(0, announced.start());
    }
    String group = "";
    Matcher grouped = GROUP.matcher(text);
    if (grouped.find()) {
      group = grouped.group(1).strip();
      text = (text.substring(0, grouped.start()) + text.substring(grouped.end())).strip();
    }
    return new NameWalk(text, cultivar, group).name()
        .map(Checked::of)
        .orElse(Checked.refused(Finding.of("name.unreadable", "species", written.strip())));
  }

  static String tidy(String written) {
    String text = written.replace('\u00A0', ' ').replace("\uFEFF", "").replace('_', ' ').strip();
    text = SIGN_BEFORE.matcher(text).replaceAll("× ");
    text = SPACES.matcher(text).replaceAll(" ");
    if (!text.contains(" ") && DOTTED.matcher(text).matches()) {
      text = text.replace('.', ' ');
    }
    boolean shouted = text.contains(" ") && text.equals(text.toUpperCase(Locale.ROOT));
    if (shouted) {
      text = text.toLowerCase(Locale.ROOT);
    }
    Matcher loud = LOUD_EPITHET.matcher(text);
    if (loud.find()) {
      text = loud.group(1) + loud.group(2).toLowerCase(Locale.ROOT) + text.substring(loud.end());
    }
    return withCapital(text);
  }

  private static String withCapital(String text) {
    Matcher start = SMALL_START.matcher(text);
    return start.find() ? start.group(1) + start.group(2).toUpperCase(Locale.ROOT) + text.substring(start.end()) : text;
  }

  /** Walks over the words of a name once its cultivar and Group are taken out. */
  private static final class NameWalk {
    private final List<String> words;
    private final String cultivar;
    private final String group;
    private final List<LowerRank> lower = new ArrayList<>();
    private final StringBuilder authors = new StringBuilder();
    private int at;
    private String epithet = "";
    private boolean hybrid;
    private Reserve reserve = Reserve.NONE;

    NameWalk(String text, String cultivar, String group) {
      this.words = text.isEmpty() ? List.of() : List.of(text.split(" "));
      this.cultivar = cultivar;
      this.group = group;
    }

    Optional<ScientificName> name() {
      List<String> parents = parents();
      if (!parents.isEmpty()) {
        return Optional.of(new ScientificName(
            false, "", "", true, List.of(), cultivar, group, parents, "", Reserve.NONE));
      }
      boolean intergeneric = NameWords.isHybridSign(word(0)) && CAPITAL.matcher(word(1)).matches();
      at = intergeneric ? 1 : 0;
      String genus = word(at++);
      if (!intergeneric && TIGHT_SIGN.matcher(genus).matches()) {
        intergeneric = true;
        genus = genus.substring(1);
      }
      if (!GENUS.matcher(genus).matches() && !INITIAL.matcher(genus).matches()) {
        return Optional.empty();
      }
      readSpecies();
      while (at < words.size()) {
        readNext();
      }
      return Optional.of(new ScientificName(intergeneric, genus, epithet, hybrid, lower, cultivar, group,
          List.of(), authors.toString().strip(), reserve));
    }

    /** A formula names both parents: Salix aurita L. × S. caprea L. (ICN Art. H.2). */
    private List<String> parents() {
      for (int i = 1; i < words.size() - 1; i++) {
        boolean upperAfter = CAPITAL.matcher(words.get(i + 1)).matches();
        boolean epithetBefore = i >= 2 && SOME_EPITHET.matcher(words.get(1)).matches();
        if (NameWords.isHybridSign(words.get(i)) && (upperAfter || epithetBefore && lower.isEmpty())) {
          if (NameWords.rank(words.get(i - 1)).isPresent()) {
            continue;
          }
          return List.of(String.join(" ", words.subList(0, i)), String.join(" ", words.subList(i + 1, words.size())));
        }
      }
      return List.of();
    }

    private void readSpecies() {
      if (NameWords.isOpenSpecies(word(at))) {
        reserve = Reserve.SPECIES_OPEN;
        at++;
        return;
      }
      if (NameWords.isDoubt(word(at))) {
        reserve = Reserve.UNCERTAIN;
        at++;
      }
      boolean sign = NameWords.isHybridSign(word(at));
      String next = word(sign ? at + 1 : at);
      if (NameWords.isEpithet(next) || NameWords.isRankOfGenus(next)) {
        if (NameWords.isRankOfGenus(next)) {
          at += sign ? 1 : 2;
          return;
        }
        hybrid = sign;
        epithet = next;
        at += sign ? 2 : 1;
        if (!hybrid && SIGN_HYPHEN.matcher(epithet).matches()) {
          hybrid = true;
          epithet = epithet.substring(2);
        }
      }
    }

    private void readNext() {
      String word = word(at);
      String next = word(at + 1);
      boolean signed = NameWords.isHybridSign(next);
      String after = signed ? word(at + 2) : next;
      if (NameWords.rank(word).isPresent() && NameWords.isEpithet(after)) {
        lower.add(new LowerRank(NameWords.rank(word).get(), (signed ? "× " : "") + after));
        authors.setLength(0);
        at += signed ? 3 : 2;
      } else if (NameWords.breadth(words, at).isPresent()) {
        NameWords.Found found = NameWords.breadth(words, at).get();
        reserve = found.reserve();
        at += found.words();
      } else if (NameWords.isDoubt(word)) {
        reserve = Reserve.UNCERTAIN;
        at++;
      } else if (authors.isEmpty() && lower.isEmpty() && !epithet.isEmpty() && NameWords.isEpithet(word)) {
        // Three words without a rank, as some lists write varieties.
        lower.add(new LowerRank("", word));
        at++;
      } else {
        authors.append(word).append(' ');
        at++;
      }
    }

    private String word(int index) {
      return index < words.size() ? words.get(index) : "";
    }
  }
}
