package guildwood.species.web;

import guildwood.species.Trait;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How the traits are gathered on the pages, in reading order. */
enum TraitGroup {
  PLACE(Trait.LIGHT, Trait.LIGHT_PREFERRED, Trait.MOISTURE, Trait.MOISTURE_PREFERRED, Trait.PH, Trait.PH_PREFERRED,
      Trait.FERTILITY, Trait.FERTILITY_PREFERRED, Trait.TEXTURE, Trait.COLDEST_WINTER, Trait.FROST_FREE_DAYS),
  GROWTH(Trait.LAYER, Trait.HEIGHT, Trait.CROWN, Trait.GROWTH_RATE, Trait.DURATION, Trait.ROOT_FORM, Trait.SPREAD),
  WORK(Trait.FUNCTION),
  YIELD(Trait.BLOOM, Trait.HARVEST, Trait.USE),
  INCREASE(Trait.PROPAGATION, Trait.POLLINATION),
  ENEMIES(Trait.CONFLICT),
  ORIGIN(Trait.NATIVITY, Trait.WETLAND),
  CARE(Trait.CAUTION);

  private final List<Trait> traits;

  TraitGroup(Trait... traits) {
    this.traits = List.of(traits);
  }

  List<Trait> traits() {
    return traits;
  }

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<TraitGroup> ofKey(String key) {
    return Arrays.stream(values()).filter(group -> group.key().equals(key)).findFirst();
  }
}
