package guildwood.importing;

/** Everything that settles what an import of a table brings. */
public record ImportPlan(Mapping mapping, ImportSource source, Decisions decisions) {}
