package guildwood.importing.web;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;

/** Somebody who brings tables, for tests: goes through the pages of the import without scripts. */
final class TableBringer {
  private final HttpVisitor visitor;

  TableBringer(HttpVisitor visitor) {
    this.visitor = visitor;
  }

  HttpVisitor visitor() {
    return visitor;
  }

  /** Sends a file that must be taken, and gives the address of its draft. */
  String send(String name, String table) {
    Page reply = visitor.postFile("/import", name, table.getBytes(StandardCharsets.UTF_8));
    if (reply.status() != 303) {
      throw new AssertionError(name + " was not taken: " + reply.messages());
    }
    return reply.location();
  }

  /** Sends a file and takes its only sheet with the headers that are found. */
  String map(String name, String table) {
    String draft = send(name, table);
    Page sheet = visitor.get(draft + "/sheet");
    visitor.submit(draft + "/sheet", "sheet", sheet.valueOf("sheet"), "first", sheet.valueOf("first"), "last", sheet.valueOf("last"));
    return draft;
  }

  /** Looks a mapped draft through, with more fields of the page of its columns. */
  Page look(String draft, String... namesAndValues) {
    String[] all = new String[namesAndValues.length + 6];
    System.arraycopy(namesAndValues, 0, all, 0, namesAndValues.length);
    System.arraycopy(new String[] {"source_kind", "own-experience", "source_title", "My notebook", "then", "look"}, 0, all,
        namesAndValues.length, 6);
    Page reply = visitor.post(draft + "/columns", all);
    if (reply.status() != 303) {
      throw new AssertionError(draft + " was not looked through: " + reply.messages());
    }
    return await(draft + "/review");
  }

  /** Brings a draft in that was looked through, and gives the address of the import. */
  String bring(String draft) {
    Page reply = visitor.post(draft + "/bring");
    if (reply.status() != 303) {
      throw new AssertionError(draft + " was not brought in: " + reply.status());
    }
    Page done = await(draft + "/bring");
    if (!done.location().startsWith("/imports/")) {
      throw new AssertionError(draft + " was not brought in, after " + reply.location() + ": " + done.status() + " " + done.location() + done.messages());
    }
    return done.location();
  }

  /** The page once the work on it is done; a page that leads on counts as done. */
  Page await(String path) {
    return await(path, 30);
  }

  Page await(String path, int seconds) {
    Instant end = Instant.now().plus(Duration.ofSeconds(seconds));
    while (Instant.now().isBefore(end)) {
      Page page = visitor.get(path);
      if (!page.html().contains("id=\"progress\"")) {
        return page;
      }
      pause();
    }
    throw new AssertionError(path + " is still at work");
  }

  private static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
