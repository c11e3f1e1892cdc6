package guildwood.account;

import java.time.Instant;
import java.util.Optional;

/** The accounts of this installation, and who is signed in. */
public interface Accounts {
  boolean anyExists();

  /** Keeps the first account. False where one existed already: a set-up link works once. */
  boolean addFirst(String name, String passwordHash);

  Optional<Account> find(String name);

  void signIn(Account account, String tokenHash, Instant expiresAt);

  /** The account signed in with the token, where the sign-in has not expired. */
  Optional<Account> signedIn(String tokenHash, Instant now);

  void signOut(String tokenHash);
}
