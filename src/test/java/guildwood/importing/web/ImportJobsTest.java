package guildwood.importing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.web.ImportJobs.Job;
import guildwood.importing.web.ImportJobs.Kind;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Long work, one piece at a time: it can be watched and stopped, and says what came of it. */
class ImportJobsTest {
  private final ImportJobs jobs = new ImportJobs();
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch mayEnd = new CountDownLatch(1);

  @AfterEach
  void close() {
    mayEnd.countDown();
    jobs.close();
  }

  private Job startSlow() throws InterruptedException {
    Job job = jobs.start(Kind.REVIEW, 7, "list.csv", 100, progress -> {
      progress.at(40);
      begun.countDown();
      await(mayEnd);
      return progress.at(100) ? Checked.of(7L) : Checked.refused(Finding.of("import.stopped", ""));
    }).orElseThrow();
    assertTrue(begun.await(20, TimeUnit.SECONDS));
    return job;
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void awaitDone(Job job) throws InterruptedException {
    for (int i = 0; i < 2_000 && !job.isDone(); i++) {
      Thread.sleep(10);
    }
    assertTrue(job.isDone());
  }

  @Test
  void whileOneIsAtWorkNoOtherBegins() throws InterruptedException {
    Job job = startSlow();
    assertEquals(40, job.rows());
    assertTrue(jobs.isRunning(Kind.REVIEW, 7));
    assertFalse(jobs.isRunning(Kind.BRING, 7));
    assertTrue(jobs.start(Kind.BRING, 8, "other.csv", 0, progress -> Checked.of(8L)).isEmpty());
    mayEnd.countDown();
    awaitDone(job);
    assertEquals(Optional.of(7L), job.result());
    Job next = jobs.start(Kind.BRING, 8, "other.csv", 0, progress -> Checked.of(8L)).orElseThrow();
    awaitDone(next);
    assertEquals(Optional.of(8L), next.result());
    assertTrue(jobs.of(Kind.REVIEW, 7).isEmpty());
  }

  @Test
  void stoppingIsToldToTheWork() throws InterruptedException {
    Job job = startSlow();
    job.cancel();
    mayEnd.countDown();
    awaitDone(job);
    assertEquals(Optional.empty(), job.result());
    assertEquals("import.stopped", job.findings().get(0).code());
  }

  @Test
  void aBugEndsTheWorkAndTheNextBegins() throws InterruptedException {
    Job job = jobs.start(Kind.BRING, 7, "list.csv", 0, progress -> {
      throw new IllegalStateException("on purpose, for this test");
    }).orElseThrow();
    awaitDone(job);
    assertTrue(job.isFailed());
    assertEquals(Optional.empty(), job.result());
    assertTrue(jobs.start(Kind.BRING, 7, "list.csv", 0, progress -> Checked.of(1L)).isPresent());
  }
}
