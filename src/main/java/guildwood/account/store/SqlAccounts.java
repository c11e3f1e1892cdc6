package guildwood.account.store;

import guildwood.account.Account;
import guildwood.account.Accounts;
import guildwood.store.Database;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;

/** Accounts and sessions in the database. */
public final class SqlAccounts implements Accounts {
  private static final RowMapper<Account> ACCOUNT =
      (row, ctx) -> new Account(row.getLong("id"), row.getString("name"), row.getString("password_hash"));

  private final Database database;

  public SqlAccounts(Database database) {
    this.database = database;
  }

  @Override
  public boolean anyExists() {
    return database.read(h -> h.createQuery("select count(*) from account").mapTo(Long.class).one() > 0);
  }

  /** One at a time: two transactions at once would both find that no account exists. */
  @Override
  public synchronized boolean addFirst(String name, String passwordHash) {
    return database.change(h -> h.createUpdate(
            "insert into account (name, password_hash) select :name, :hash where not exists (select 1 from account)")
        .bind("name", name).bind("hash", passwordHash).execute() == 1);
  }

  @Override
  public Optional<Account> find(String name) {
    return database.read(h -> h.createQuery("select * from account where name = :name")
        .bind("name", name).map(ACCOUNT).findOne());
  }

  @Override
  public void signIn(Account account, String tokenHash, Instant expiresAt) {
    database.change(h -> {
      h.createUpdate("delete from session where expires_at < :now")
          .bind("now", Instant.now().atOffset(ZoneOffset.UTC)).execute();
      return h.createUpdate("insert into session (token_hash, account_id, expires_at) values (:hash, :account, :expires)")
          .bind("hash", tokenHash).bind("account", account.id())
          .bind("expires", expiresAt.atOffset(ZoneOffset.UTC)).execute();
    });
  }

  @Override
  public Optional<Account> signedIn(String tokenHash, Instant now) {
    return database.read(h -> h.createQuery(
            "select a.* from session s join account a on a.id = s.account_id where token_hash = :hash and expires_at > :now")
        .bind("hash", tokenHash).bind("now", now.atOffset(ZoneOffset.UTC)).map(ACCOUNT).findOne());
  }

  @Override
  public void signOut(String tokenHash) {
    database.change(h -> h.createUpdate("delete from session where token_hash = :hash").bind("hash", tokenHash).execute());
  }
}
