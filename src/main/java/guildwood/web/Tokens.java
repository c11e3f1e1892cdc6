package guildwood.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Random tokens of 128 bits that nobody can guess, and their hashes, the only form in which they are kept. */
public final class Tokens {
  /** Characters of a token. */
  public static final int LENGTH = 22;

  private static final SecureRandom RANDOM = new SecureRandom();

  private Tokens() {}

  public static String fresh() {
    byte[] bytes = new byte[16];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** SHA-256 as 64 hexadecimal digits; enough for random tokens, not for passwords. */
  public static String hash(String token) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
