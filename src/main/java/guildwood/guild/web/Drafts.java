package guildwood.guild.web;

import guildwood.guild.DraftHistory;
import guildwood.web.Csrf;
import guildwood.web.Visitor;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Drafts people work on, one a bed and person, in memory only: a draft outlives the page it is on, not the
 * program. The ones not touched for longest are forgotten.
 */
public final class Drafts {
  private static final int KEPT = 300;

  /** An owner's draft is the same on every device; who has no account is known by the browser. */
  private record Key(String person, long bedId) {}

  private final Map<Key, DraftHistory> drafts = new LinkedHashMap<>(16, 0.75f, true) {
    private static final long serialVersionUID = 1L;

    @Override
    protected boolean removeEldestEntry(Map.Entry<Key, DraftHistory> eldest) {
      return size() > KEPT;
    }
  };

  Optional<DraftHistory> find(Context ctx, long bedId) {
    synchronized (drafts) {
      return key(ctx, bedId).map(drafts::get);
    }
  }

  void keep(Context ctx, long bedId, DraftHistory history) {
    synchronized (drafts) {
      key(ctx, bedId).ifPresent(key -> drafts.put(key, history));
    }
  }

  void forget(Context ctx, long bedId) {
    synchronized (drafts) {
      key(ctx, bedId).ifPresent(drafts::remove);
    }
  }

  private static Optional<Key> key(Context ctx, long bedId) {
    Visitor visitor = Visitor.of(ctx);
    Optional<String> person = visitor.accountId().isPresent()
        ? Optional.of("account " + visitor.accountId().getAsLong())
        : Csrf.visit(ctx).map(visit -> "visit " + visit);
    return person.map(p -> new Key(p, bedId));
  }
}
