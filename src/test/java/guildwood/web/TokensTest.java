package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TokensTest {
  @Test
  void aTokenIs128BitsInTheUrlSafeAlphabet() {
    String token = Tokens.fresh();
    assertTrue(token.matches("[A-Za-z0-9_-]{22}"), token);
    assertEquals(Tokens.LENGTH, token.length());
    assertEquals(16, Base64.getUrlDecoder().decode(token).length);
  }

  @Test
  void everyByteOfATokenVaries() {
    // 500 draws of a byte miss a given one of its bits with a chance of 2^-499.
    int[] ones = new int[16];
    int[] zeros = new int[16];
    Set<String> seen = new HashSet<>();
    for (int n = 0; n < 500; n++) {
      String token = Tokens.fresh();
      assertTrue(seen.add(token));
      byte[] bytes = Base64.getUrlDecoder().decode(token);
      for (int i = 0; i < bytes.length; i++) {
        ones[i] |= bytes[i] & 0xff;
        zeros[i] |= ~bytes[i] & 0xff;
      }
    }
    for (int i = 0; i < 16; i++) {
      assertEquals(0xff, ones[i], "byte " + i);
      assertEquals(0xff, zeros[i], "byte " + i);
    }
  }

  /** The digest of "abc" that NIST gives as the example of SHA-256 (csrc.nist.gov, Examples/SHA256.pdf). */
  @Test
  void theHashIsSha256InHexadecimal() {
    assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Tokens.hash("abc"));
  }
}
