package guildwood.web;

import guildwood.App;
import guildwood.Settings;

/** One demonstration for all tests that lay out beds of their own or leave those of the demonstration as they are. */
public final class SharedDemo {
  private static App app;

  private SharedDemo() {}

  /** Started by the first test that asks; it ends with the tests. */
  public static synchronized App app() {
    if (app == null) {
      app = App.start(Settings.demoOnFreePort());
      Runtime.getRuntime().addShutdownHook(new Thread(app::close));
    }
    return app;
  }
}
