package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What a species or cultivar is called.
 *
 * @param scientificName accepted name without authors, hybrids with the sign ×
 * @param commonNames in the order people should see them; may be empty
 * @param family may be empty
 * @param synonyms other scientific names that find it
 */
public record SpeciesNames(String scientificName, List<String> commonNames, String family, List<String> synonyms) {
  public static final int LONGEST_NAME = 200;
  public static final int LONGEST_COMMON_NAMES = 500;
  public static final int LONGEST_FAMILY = 80;
  public static final int LONGEST_SYNONYMS = 1000;
  private static final int LONGEST_ID = 100;

  private static final Pattern GENUS_FIRST = Pattern.compile("(× ?)?[A-Z][a-zëïöü-]+( .+)?");
  private static final Pattern FAMILY = Pattern.compile("|\\p{Lu}[\\p{L} -]+");

  public SpeciesNames {
    commonNames = List.copyOf(commonNames);
    synonyms = List.copyOf(synonyms);
  }

  public static SpeciesNames of(Species species) {
    return new SpeciesNames(species.scientificName(), species.commonNames(), species.family(), species.synonyms());
  }

  /**
   * Reads names as they are typed; several common names or synonyms are joined by semicolons. A letter x
   * that stands for the hybrid sign becomes the sign. Fields scientific_name, common_names, family, synonyms.
   */
  public static Checked<SpeciesNames> read(String scientific, String common, String family, String synonyms) {
    List<Finding> findings = new ArrayList<>();
    String name = line(scientific, "scientific_name", LONGEST_NAME, findings);
    List<String> others = list(line(common, "common_names", LONGEST_COMMON_NAMES, findings));
    String itsFamily = line(family, "family", LONGEST_FAMILY, findings);
    List<String> olderNames = list(line(synonyms, "synonyms", LONGEST_SYNONYMS, findings)).stream()
        .map(SpeciesNames::withHybridSign).toList();
    if (scientific.isBlank()) {
      findings.add(Finding.of("value.missing", "scientific_name"));
    } else if (!name.isEmpty() && !GENUS_FIRST.matcher(withHybridSign(name)).matches()) {
      findings.add(Finding.of("species.not-a-name", "scientific_name", name));
    }
    if (!FAMILY.matcher(itsFamily).matches()) {
      findings.add(Finding.of("species.not-a-family", "family", itsFamily));
    }
    olderNames.stream().filter(n -> !GENUS_FIRST.matcher(n).matches()).findFirst()
        .ifPresent(n -> findings.add(Finding.of("species.not-a-name", "synonyms", n)));
    return findings.isEmpty()
        ? Checked.of(new SpeciesNames(withHybridSign(name), others, itsFamily, olderNames))
        : Checked.refused(findings);
  }

  /** The key made from the scientific name: lower-case letters, digits and hyphens; × becomes x. */
  public String id() {
    String slug = slug(scientificName);
    return slug.length() <= LONGEST_ID ? slug : slug.substring(0, LONGEST_ID).replaceAll("-$", "");
  }

  /** A name as lower-case letters, digits and hyphens; empty where it has none. */
  public static String slug(String name) {
    String plain = Normalizer.normalize(name.replace("×", " x "), Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    return plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
  }

  /** A name reduced to what tells it from others: no case, accents, signs or double spaces. */
  public static String folded(String name) {
    return slug(name).replaceAll("(^|-)x-", "$1");
  }

  private static String withHybridSign(String name) {
    return name.replaceAll("(^| )[xX] ", "$1× ").replaceAll(" +", " ");
  }

  private static List<String> list(String text) {
    return Arrays.stream(text.split(";")).map(String::strip).filter(s -> !s.isEmpty()).distinct().toList();
  }

  private static String line(String typed, String field, int longest, List<Finding> findings) {
    String text = typed.strip();
    if (text.length() > longest) {
      findings.add(Finding.of("text.too-long", field, longest));
      return "";
    }
    if (text.chars().anyMatch(Character::isISOControl)) {
      findings.add(Finding.of("text.control-characters", field));
      return "";
    }
    return text;
  }
}
