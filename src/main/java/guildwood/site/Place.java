package guildwood.site;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where a site lies in law: an ISO 3166 code of a country, or of a state or province in it. Lists of
 * regulated plants go by it.
 *
 * <p>Country codes are those the JDK knows (ISO 3166-1 alpha-2). States of the USA are checked against their
 * ISO 3166-2 codes, because a mistyped state would silently miss its list; other countries' parts are only
 * checked for their form.
 */
public final class Place {
  private static final Set<String> COUNTRIES = Locale.getISOCountries(Locale.IsoCountryCode.PART1_ALPHA2);

  private static final String STATE_LIST = """
      AL Alabama;AK Alaska;AZ Arizona;AR Arkansas;CA California;CO Colorado;CT Connecticut;DE Delaware;\
      DC District of Columbia;FL Florida;GA Georgia;HI Hawaii;ID Idaho;IL Illinois;IN Indiana;IA Iowa;KS Kansas;\
      KY Kentucky;LA Louisiana;ME Maine;MD Maryland;MA Massachusetts;MI Michigan;MN Minnesota;MS Mississippi;\
      MO Missouri;MT Montana;NE Nebraska;NV Nevada;NH New Hampshire;NJ New Jersey;NM New Mexico;NY New York;\
      NC North Carolina;ND North Dakota;OH Ohio;OK Oklahoma;OR Oregon;PA Pennsylvania;PR Puerto Rico;\
      RI Rhode Island;SC South Carolina;SD South Dakota;TN Tennessee;TX Texas;UT Utah;VT Vermont;VA Virginia;\
      WA Washington;WV West Virginia;WI Wisconsin;WY Wyoming""";

  private static final Map<String, String> STATES = states();

  private Place() {}

  /** Reads a code, in any case; an empty one is no statement. */
  public static Checked<String> read(String typed, String field) {
    String code = typed.strip().toUpperCase(Locale.ROOT);
    if (code.isEmpty()) {
      return Checked.of("");
    }
    if (!code.matches("[A-Z]{2}(-[A-Z0-9]{1,3})?")) {
      return Checked.refused(Finding.of("place.form", field));
    }
    String country = code.substring(0, 2);
    if (!COUNTRIES.contains(country)) {
      return Checked.refused(Finding.of("place.country", field, country));
    }
    if (country.equals("US") && code.length() > 2 && !STATES.containsKey(code.substring(3))) {
      return Checked.refused(Finding.of("place.state", field, code.substring(3)));
    }
    return Checked.of(code);
  }

  /** The name people know, for example {@code Wisconsin, United States}; empty for an empty code. */
  public static String name(String code) {
    if (code.isEmpty()) {
      return "";
    }
    String country = new Locale.Builder().setRegion(code.substring(0, 2)).build().getDisplayCountry(Locale.ENGLISH);
    if (code.length() == 2) {
      return country;
    }
    String part = code.startsWith("US-") ? STATES.getOrDefault(code.substring(3), code) : code;
    return part + ", " + country;
  }

  private static Map<String, String> states() {
    Map<String, String> states = new TreeMap<>();
    for (String entry : STATE_LIST.split(";")) {
      states.put(entry.substring(0, 2), entry.substring(3));
    }
    return states;
  }
}
