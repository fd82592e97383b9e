package plainsward.records;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one writer at a time into a home: between running copies by a locked file, between books of
 * one running copy by a lock of its own, because the system's locks don't part these.
 */
final class Guard {
  private static final String FILE = ".lock";
  private static final Map<Path, ReentrantLock> INSIDE = new ConcurrentHashMap<>();

  /** Something that is done while the guard is held. */
  @FunctionalInterface
  interface Work<T> {
    /** Does it. */
    T run() throws IOException;
  }

  private final Path home;
  private final Duration patience;
  private final ReentrantLock inside;

  Guard(Path home, Duration patience) {
    this.home = home;
    this.patience = patience;
    inside = INSIDE.computeIfAbsent(home.toAbsolutePath().normalize(), p -> new ReentrantLock());
  }

  /**
   * Does the work alone.
   *
   * @throws RecordFault where another copy keeps the lock longer than the patience, or where {@code
   *     file} could not be written
   */
  <T> T alone(Path file, Work<T> work) {
    try {
      return tried(patience, work).orElseThrow(() -> Faults.busy(home));
    } catch (IOException fault) {
      throw Faults.writing(file, fault);
    }
  }

  /** Does the work alone, or gives nothing where somebody else is writing at this moment. */
  <T> Optional<T> now(Work<T> work) throws IOException {
    return tried(Duration.ZERO, work);
  }

  private <T> Optional<T> tried(Duration wait, Work<T> work) throws IOException {
    long end = System.nanoTime() + wait.toNanos();
    if (!taken(wait)) {
      return Optional.empty();
    }
    try {
      if (inside.getHoldCount() > 1) {
        return Optional.of(work.run());
      }
      return locked(end, work);
    } finally {
      inside.unlock();
    }
  }

  private boolean taken(Duration wait) {
    try {
      return inside.tryLock(wait.toNanos(), TimeUnit.NANOSECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private <T> Optional<T> locked(long end, Work<T> work) throws IOException {
    Files.createDirectories(home);
    try (FileChannel channel =
            FileChannel.open(
                home.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = lock(channel, end)) {
      return lock == null ? Optional.empty() : Optional.of(work.run());
    }
  }

  private static FileLock lock(FileChannel channel, long end) throws IOException {
    FileLock lock = channel.tryLock();
    while (lock == null && System.nanoTime() < end && !Thread.currentThread().isInterrupted()) {
      LockSupport.parkNanos(ThreadLocalRandom.current().nextLong(200_000, 3_000_000));
      lock = channel.tryLock();
    }
    return lock;
  }
}
