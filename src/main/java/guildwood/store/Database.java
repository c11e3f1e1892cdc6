package guildwood.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import org.flywaydb.core.Flyway;
import org.h2.tools.Restore;
import org.h2.api.ErrorCode;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;

/**
 * The H2 database of one data directory.
 *
 * <p>Two users: an administrator for migrations and upkeep, and one for the pages that can only select,
 * insert, update and delete (as administrator, SQL could run Java and read files). Every commit is
 * written at once ({@code WRITE_DELAY 0}); a change people would miss is also forced to the disk.
 */
public final class Database implements AutoCloseable {
  private static final String ADMIN = "GUILDWOOD_ADMIN";
  private static final String APP = "GUILDWOOD_APP";

  /** Stands in the data directory while a large change is under way. */
  private static final String BEFORE_LARGE_CHANGE = "before-large-change.zip";
  private static final String NAME = "guildwood";

  private final ReadWriteLock changes = new ReentrantReadWriteLock(true);
  private final Optional<Path> directory;
  private final Connection admin;
  private final HikariDataSource pool;
  private final Jdbi jdbi;

  private Database(String url, String adminPassword, Optional<Path> directory) {
    this.directory = directory;
    try {
      admin = DriverManager.getConnection(url + ";WRITE_DELAY=0", ADMIN, adminPassword);
    } catch (SQLException e) {
      throw new DatabaseUnavailable(e.getErrorCode() == ErrorCode.DATABASE_ALREADY_OPEN_1
          ? "the database is in use: another Guildwood, most likely one that serves the pages, has it open. Stop that one first."
          : "the database cannot be opened: " + e.getMessage(), e);
    }
    migrate(url, adminPassword);
    pool = poolOfApp(url);
    jdbi = Jdbi.create(pool);
  }

  /** Opens the database in a directory, making both where they do not exist, and migrates it. */
  public static Database open(Path directory) {
    try {
      Files.createDirectories(directory);
      String password = adminPassword(directory.resolve("database.key"));
      String url = "jdbc:h2:file:" + directory.toAbsolutePath().resolve(NAME);
      if (Files.exists(directory.resolve(BEFORE_LARGE_CHANGE))) {
        putBack(directory, url, password);
      }
      return new Database(url, password, Optional.of(directory));
    } catch (IOException e) {
      throw new UncheckedIOException("the data directory " + directory + " cannot be used", e);
    }
  }

  /** Whether a directory holds a database. */
  public static boolean isIn(Path directory) {
    return Files.isRegularFile(directory.resolve("guildwood.mv.db"));
  }

  /** A database that lives in memory until it is closed; for demonstrations and tests. */
  public static Database inMemory() {
    return new Database("jdbc:h2:mem:" + UUID.randomUUID(), randomPassword(), Optional.empty());
  }

  public Jdbi jdbi() {
    return jdbi;
  }

  /** Runs a change in one transaction and forces it to the disk before returning. */
  public <R> R change(HandleCallback<R, RuntimeException> work) {
    changes.readLock().lock();
    try {
      R result = jdbi.inTransaction(work);
      sync();
      return result;
    } finally {
      changes.readLock().unlock();
    }
  }

  /**
   * Runs a change of very many rows in one transaction. A process killed during one so large was seen to leave a part
   * of its rows behind (H2 2.5.252), so the whole database is copied first, and the next start puts the copy back if
   * the change did not come to its end. Other changes wait meanwhile: none of them can get lost with it.
   */
  public <R> R largeChange(HandleCallback<R, RuntimeException> work) {
    changes.writeLock().lock();
    try {
      copyAside();
      R result = jdbi.inTransaction(work);
      sync();
      return result;
    } finally {
      // After an exception too: then the transaction was taken back, and the process lives.
      dropCopy();
      changes.writeLock().unlock();
    }
  }

  private void copyAside() {
    if (directory.isEmpty()) {
      return;
    }
    Path part = directory.get().resolve(BEFORE_LARGE_CHANGE + ".part");
    sync();
    try (PreparedStatement backup = admin.prepareStatement("BACKUP TO ?")) {
      backup.setString(1, part.toAbsolutePath().toString());
      backup.execute();
      try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
        written.force(true);
      }
      Files.move(part, directory.get().resolve(BEFORE_LARGE_CHANGE), StandardCopyOption.ATOMIC_MOVE);
    } catch (SQLException | IOException e) {
      throw new DatabaseUnavailable("the database could not be copied before a large change: " + e.getMessage(), e);
    }
  }

  private void dropCopy() {
    if (directory.isPresent()) {
      try {
        Files.deleteIfExists(directory.get().resolve(BEFORE_LARGE_CHANGE));
      } catch (IOException e) {
        throw new DatabaseUnavailable("the copy made before a large change could not be removed", e);
      }
    }
  }

  /** A large change did not come to its end: the database is as it was before it. */
  private static void putBack(Path directory, String url, String password) throws IOException {
    try (Connection nobodyElse = DriverManager.getConnection(url, ADMIN, password)) {
      // Only whoever can open the database may put it back; another process may be in the middle of its change.
      nobodyElse.isValid(0);
    } catch (SQLException e) {
      throw new DatabaseUnavailable("the database cannot be opened: " + e.getMessage(), e);
    }
    Restore.execute(directory.resolve(BEFORE_LARGE_CHANGE).toString(), directory.toAbsolutePath().toString(), null);
    Files.delete(directory.resolve(BEFORE_LARGE_CHANGE));
  }

  /** Runs a query. */
  public <R> R read(HandleCallback<R, RuntimeException> work) {
    return jdbi.withHandle(work);
  }

  private synchronized void sync() {
    try (Statement statement = admin.createStatement()) {
      statement.execute("CHECKPOINT SYNC");
    } catch (SQLException e) {
      throw new DatabaseUnavailable("a change could not be forced to the disk", e);
    }
  }

  private static void migrate(String url, String adminPassword) {
    Flyway.configure()
        .dataSource(url, ADMIN, adminPassword)
        .locations("classpath:db/migration")
        .load()
        .migrate();
  }

  private HikariDataSource poolOfApp(String url) {
    // The pages' password lives as long as this process: nobody else needs to know it.
    String password = randomPassword();
    try (Statement statement = admin.createStatement()) {
      statement.execute("CREATE USER IF NOT EXISTS " + APP + " PASSWORD ''");
      statement.execute("ALTER USER " + APP + " SET PASSWORD '" + password + "'");
      statement.execute("GRANT SELECT, INSERT, UPDATE, DELETE ON SCHEMA PUBLIC TO " + APP);
    } catch (SQLException e) {
      throw new DatabaseUnavailable("the pages' database user cannot be set up", e);
    }
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(url);
    config.setUsername(APP);
    config.setPassword(password);
    config.setMaximumPoolSize(8);
    config.setPoolName("guildwood");
    return new HikariDataSource(config);
  }

  private static String adminPassword(Path file) throws IOException {
    if (Files.exists(file)) {
      return Files.readString(file, StandardCharsets.US_ASCII).strip();
    }
    String password = randomPassword();
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    }
    Files.writeString(file, password + "\n", StandardCharsets.US_ASCII);
    return password;
  }

  private static String randomPassword() {
    byte[] bytes = new byte[24];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  @Override
  public void close() {
    pool.close();
    try {
      admin.close();
    } catch (SQLException e) {
      throw new DatabaseUnavailable("the database did not close cleanly", e);
    }
  }

  /** The database cannot be opened or written; the message is fit for the person who runs the program. */
  public static final class DatabaseUnavailable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    DatabaseUnavailable(String message, Throwable cause) {
      super(message, cause);
    }
  }
}
