package guildwood.account;

/**
 * Somebody who owns this installation.
 *
 * @param passwordHash Argon2id in its encoded form; never shown
 */
public record Account(long id, String name, String passwordHash) {
  public static final int LONGEST_NAME = 80;
  public static final int SHORTEST_PASSWORD = 10;
  public static final int LONGEST_PASSWORD = 200;

  @Override
  public String toString() {
    return "account " + id;
  }
}
