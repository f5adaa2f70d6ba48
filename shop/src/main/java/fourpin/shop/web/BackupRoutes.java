package fourpin.shop.web;

import fourpin.shop.store.StoreException;
import fourpin.shop.store.backup.BackupException;
import fourpin.shop.store.backup.BackupReader;
import fourpin.shop.store.backup.BackupWriter;
import fourpin.shop.store.backup.Contents;
import fourpin.shop.store.backup.Fingerprint;
import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.web.guard.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * Backup and restore from a browser on the machine that serves. A backup that was brought lies
 * aside until it is put in place by a second press, after its maker saw what it would replace.
 */
final class BackupRoutes {

  /**
   * A backup that was brought.
   *
   * @param seen what the shop kept when it was shown beside it
   */
  private record Brought(String id, Path file, Fingerprint seen) {}

  private final SqlStore store;
  private final Pages pages;
  private Optional<Brought> brought = Optional.empty();

  BackupRoutes(SqlStore store, Pages pages) {
    this.store = store;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/backup", http -> show(http, "", Optional.empty()));
    routes.get("/backup.zip", this::download);
    routes.post(Guard.BACKUP, this::look);
    routes.post("/backup/restore", this::restore);
  }

  /** What replaces every job is not for a phone at the bench. */
  private static void requireHost(Context http) {
    if (!(GuardHandler.visitor(http) instanceof Visitor.Host)) {
      throw new ForbiddenResponse(
          "Backups are made and put back at the machine that runs Fourpin only: one holds every job,"
              + " and puts itself in place of every job.");
    }
  }

  private void show(Context http, String notice, Optional<BackupPage.Preview> preview) {
    requireHost(http);
    pages.show(http, "backup", Map.of("page", new BackupPage(pages.token(http), notice, preview)));
  }

  private void download(Context http) {
    requireHost(http);
    try {
      Path file = Files.createTempFile("fourpin", ".zip");
      BackupWriter.write(store, file);
      http.contentType("application/zip")
          .header("Content-Disposition", "attachment; filename=\"fourpin-backup.zip\"")
          .result(Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private synchronized void look(Context http) {
    requireHost(http);
    Optional<UploadedFile> file = Optional.ofNullable(http.uploadedFile("file"));
    if (file.isEmpty()) {
      refused(http, "Choose a backup first.");
      return;
    }
    try {
      beside(http, "", keep(file.get()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Shows what a backup would replace of what is kept now. */
  private void beside(Context http, String notice, Path file) throws IOException {
    try {
      Contents backup = BackupReader.look(file);
      Contents.Seen here = Contents.of(store);
      Brought fresh = new Brought(UUID.randomUUID().toString(), file, here.fingerprint());
      brought = Optional.of(fresh);
      show(http, notice, Optional.of(BackupPage.preview(fresh.id(), here.contents(), backup)));
    } catch (BackupException e) {
      Files.deleteIfExists(file);
      refused(http, "The backup cannot be used: " + e.getMessage() + ".");
    }
  }

  private Path keep(UploadedFile uploaded) throws IOException {
    drop();
    Path file = Files.createTempFile("fourpin-brought", ".zip");
    file.toFile().deleteOnExit();
    try (InputStream in = uploaded.content()) {
      Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
    }
    return file;
  }

  private void drop() {
    brought.ifPresent(b -> b.file().toFile().delete());
    brought = Optional.empty();
  }

  private void refused(Context http, String why) {
    http.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(http, why + " Nothing was changed.", Optional.empty());
  }

  private synchronized void restore(Context http) {
    requireHost(http);
    String wanted = Objects.requireNonNullElse(http.formParam("upload"), "");
    Optional<Brought> found = brought.filter(b -> b.id().equals(wanted));
    if (found.isEmpty()) {
      refused(http, "That backup is no longer at hand: choose it again.");
      return;
    }
    try {
      putInPlace(http, found.get());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What came after it was looked at would be lost in silence: it is shown first. */
  private void putInPlace(Context http, Brought backup) throws IOException {
    try {
      BackupReader.restore(backup.file(), store, backup.seen().unchanged());
      drop();
      show(http, "The shop keeps now what the backup holds.", Optional.empty());
    } catch (BackupException e) {
      refused(http, "It was not put in place: " + e.getMessage() + ".");
    } catch (StoreException e) {
      http.status(HttpStatus.CONFLICT);
      beside(http, "It was not put in place: " + e.getMessage() + ".", backup.file());
    }
  }
}
