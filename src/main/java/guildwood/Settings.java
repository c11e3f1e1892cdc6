package guildwood;

import java.nio.file.Path;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Everything that can be set, in one place. Each setting is an option of {@code serve} and an environment
 * variable; the option wins.
 *
 * @param demo {@code --demo} / GUILDWOOD_DEMO=true: an invented site with beds, kept in memory only, open to everybody who can reach the address
 * @param dataDirectory {@code --data} / GUILDWOOD_DATA: where the database lives; made on first start; {@code ./data} unless set
 * @param host {@code --host} / GUILDWOOD_HOST: the address to listen on; 127.0.0.1 (this machine only) unless set
 * @param port {@code --port} / GUILDWOOD_PORT: 8080 unless set; 0 takes any free one
 * @param publicAddress {@code --public-address} / GUILDWOOD_PUBLIC_ADDRESS: how others reach the pages, for links that are handed on; the address listened on unless set
 */
public record Settings(boolean demo, Path dataDirectory, String host, int port, String publicAddress) {
  public Settings {
    if (port < 0 || port > 65535) {
      throw new IllegalArgumentException("no port " + port);
    }
    if (host.isBlank()) {
      throw new IllegalArgumentException("no host to listen on");
    }
  }

  /** A demonstration on any free port, for tests. */
  public static Settings demoOnFreePort() {
    return new Settings(true, Path.of("data"), "127.0.0.1", 0, "");
  }

  /** Whether only this machine can reach the pages. */
  public boolean loopbackOnly() {
    return host.equals("localhost") || host.startsWith("127.") || host.equals("::1") || host.equals("[::1]");
  }

  /** Settings from options, where given, then from the environment, then from the defaults above. */
  public static Settings of(boolean demo, Path data, String host, OptionalInt port, String address, Map<String, String> environment) {
    return new Settings(
        demo || Boolean.parseBoolean(environment.getOrDefault("GUILDWOOD_DEMO", "false")),
        data != null ? data : Path.of(environment.getOrDefault("GUILDWOOD_DATA", "data")),
        host != null ? host : environment.getOrDefault("GUILDWOOD_HOST", "127.0.0.1"),
        port.isPresent() ? port.getAsInt() : portOf(environment.getOrDefault("GUILDWOOD_PORT", "8080")),
        stripSlash(address != null ? address : environment.getOrDefault("GUILDWOOD_PUBLIC_ADDRESS", "")));
  }

  private static int portOf(String text) {
    if (!text.matches("\\d{1,5}")) {
      throw new IllegalArgumentException("GUILDWOOD_PORT is not a port: " + text);
    }
    return Integer.parseInt(text);
  }

  private static String stripSlash(String address) {
    return address.endsWith("/") ? address.substring(0, address.length() - 1) : address;
  }
}
