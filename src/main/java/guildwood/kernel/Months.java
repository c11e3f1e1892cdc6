package guildwood.kernel;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * A set of calendar months, as written for the northern temperate year.
 *
 * @param bits bit 0 is January, bit 11 December
 */
public record Months(int bits) {
  public static final Months NONE = new Months(0);

  public Months {
    if ((bits & ~0xFFF) != 0) {
      throw new IllegalArgumentException("months beyond December in " + bits);
    }
  }

  public static Months of(Collection<Month> months) {
    return new Months(months.stream().mapToInt(m -> 1 << (m.getValue() - 1)).reduce(0, (a, b) -> a | b));
  }

  /** The months from {@code first} through {@code last}; October through February runs over the new year. */
  public static Months through(Month first, Month last) {
    int bits = 0;
    Month month = first;
    while (month != last) {
      bits |= 1 << (month.getValue() - 1);
      month = month.plus(1);
    }
    return new Months(bits | 1 << (last.getValue() - 1));
  }

  public boolean contains(Month month) {
    return (bits & 1 << (month.getValue() - 1)) != 0;
  }

  public boolean isEmpty() {
    return bits == 0;
  }

  public Months union(Months other) {
    return new Months(bits | other.bits);
  }

  public List<Month> list() {
    List<Month> months = new ArrayList<>();
    for (Month month : Month.values()) {
      if (contains(month)) {
        months.add(month);
      }
    }
    return List.copyOf(months);
  }
}
