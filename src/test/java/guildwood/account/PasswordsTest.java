package guildwood.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PasswordsTest {
  /**
   * A test vector of the Argon2 reference implementation (phc-winner-argon2, src/test.c: t 2, m 2^8 KiB, p 1),
   * read where RustCrypto's argon2 repeats it (tests/kat.rs, reference_argon2id_v0x13_2_8_1).
   */
  private static final String REFERENCE = "$argon2id$v=19$m=256,t=2,p=1$c29tZXNhbHQ$nf65EOgLrQMR/uIPnA4rEsF5h7TKyQwu9U1bMCHGi/4";

  @Test
  void agreesWithTheReferenceImplementation() {
    assertTrue(Passwords.matches("password", account(REFERENCE)));
    assertFalse(Passwords.matches("passwore", account(REFERENCE)));
  }

  /**
   * "Use Argon2id with a minimum configuration of 19 MiB of memory, an iteration count of 2, and 1 degree of
   * parallelism" (OWASP Password Storage Cheat Sheet).
   */
  @Test
  void theEncodedFormNamesOwaspsLeastEffort() {
    String hash = Passwords.hash("correct horse battery");
    assertTrue(hash.matches("\\$argon2id\\$v=19\\$m=19456,t=2,p=1\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}"), hash);
    assertFalse(hash.contains("horse"));
    assertTrue(hash.length() <= 300, "the column takes 300 characters");
  }

  @Test
  void everyHashHasItsOwnSalt() {
    assertNotEquals(Passwords.hash("the same password"), Passwords.hash("the same password"));
  }

  @Test
  void onlyTheVeryPasswordMatches() {
    String password = "Grünkohl & 🌳 — zwölf";
    Account account = account(Passwords.hash(password));
    assertTrue(Passwords.matches(password, account));
    assertFalse(Passwords.matches(password + " ", account));
    assertFalse(Passwords.matches("grünkohl & 🌳 — zwölf", account));
    assertFalse(Passwords.matches("", account));
  }

  @Test
  void nobodyHasAPassword() {
    assertFalse(Passwords.matchesNobody("nobody has this password"));
    assertFalse(Passwords.matchesNobody("anything else"));
  }

  @Test
  void anAccountDoesNotTellItsHash() {
    assertEquals("account 7", account(REFERENCE).toString());
  }

  private static Account account(String hash) {
    return new Account(7, "Wren", hash);
  }
}
