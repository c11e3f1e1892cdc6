package guildwood.guild;

/**
 * A candidate in a guild.
 *
 * @param count plants, standing ones included
 * @param standing how many of it stand already
 */
record Member(Candidate candidate, int count, int standing) {

  /** Plants to put in. */
  int added() {
    return Math.max(0, count - standing);
  }

  Provision provision() {
    return Provision.of(candidate.supply(), count, standing);
  }

  int bought() {
    return provision().buy();
  }

  long costCents(Rules rules) {
    return (long) bought() * candidate.supply().priceCents().orElse(rules.priceIfUnknownCents());
  }

  /** Ground under all its crowns; 0 where its stature is not known. */
  int crownDm2() {
    return candidate.stature().map(s -> s.crownDm2() * count).orElse(0);
  }

  String id() {
    return candidate.speciesId();
  }
}
