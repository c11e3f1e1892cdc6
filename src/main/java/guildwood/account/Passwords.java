package guildwood.account;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;

/** Argon2id with 19 MiB and two passes (OWASP Password Storage Cheat Sheet, minimum configuration). */
public final class Passwords {
  private static final Argon2Function ARGON2 = Argon2Function.getInstance(19 * 1024, 2, 1, 32, Argon2.ID);
  // Checked when the name is unknown, so that a wrong name takes as long as a wrong password.
  private static final String NOBODY = hash("nobody has this password");

  private Passwords() {}

  public static String hash(String password) {
    return Password.hash(password).addRandomSalt(16).with(ARGON2).getResult();
  }

  /** With the effort the hash itself names: hashes kept before the effort is raised still match. */
  public static boolean matches(String password, Account account) {
    return Password.check(password, account.passwordHash()).with(Argon2Function.getInstanceFromHash(account.passwordHash()));
  }

  /** Takes the time of a check and says no. */
  public static boolean matchesNobody(String password) {
    return Password.check(password, NOBODY).with(ARGON2) && false;
  }
}
