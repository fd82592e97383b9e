package plainsward.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.function.LongConsumer;
import plainsward.reply.Reply;

/**
 * A line in, a line of JSON out, in order. One thread reads, a few answer, and the caller's own
 * thread writes; only so many lines, and only so many bytes of them, are ever under way.
 */
final class Batch {
  /** The longest line, in bytes. */
  static final int LONGEST_LINE = 8 << 20;

  private static final int MOST_LINES = 64;
  private static final int MOST_BYTES = 2 * LONGEST_LINE + 2;

  private final Desk desk;
  private final Out out;
  private final Length length;
  private final int workers;
  private final BlockingQueue<Job> queue = new ArrayBlockingQueue<>(MOST_LINES);
  private final Semaphore room = new Semaphore(MOST_BYTES);

  /**
   * One line on its way.
   *
   * @param answer what is to be written for it; empty where reading ended
   * @param fault why reading ended, where it was no good end
   * @param bytes how much room it takes
   */
  private record Job(Optional<FutureTask<Answer>> answer, Optional<IOException> fault, int bytes) {}

  /**
   * What is written for a line.
   *
   * @param line the JSON
   * @param isGood whether every question of it got a reply
   */
  private record Answer(String line, boolean isGood) {}

  /**
   * A batch.
   *
   * @param workers how many lines are answered at once, at least 1
   */
  Batch(Desk desk, Out out, Length length, int workers) {
    this.desk = desk;
    this.out = out;
    this.length = length;
    this.workers = workers;
  }

  /**
   * Answers all lines, or as many as anybody reads the answers of.
   *
   * @param progress hears how many lines are answered
   * @return whether every line got its replies
   * @throws IOException where the input can't be read to its end
   */
  boolean run(InputStream in, LongConsumer progress) throws IOException {
    ExecutorService answering =
        Executors.newFixedThreadPool(workers, task -> daemon("answering", task));
    Thread reading = daemon("reading", () -> read(new LineSource(in, LONGEST_LINE), answering));
    reading.start();
    try {
      return write(progress);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    } finally {
      reading.interrupt();
      answering.shutdownNow();
    }
  }

  private static Thread daemon(String name, Runnable task) {
    Thread thread = new Thread(task, "batch-" + name);
    thread.setDaemon(true);
    return thread;
  }

  private void read(LineSource lines, ExecutorService answering) {
    try {
      Optional<IOException> fault = submitAll(lines, answering);
      queue.put(new Job(Optional.empty(), fault, 0));
    } catch (InterruptedException | RejectedExecutionException nobodyReadsOn) {
      Thread.currentThread().interrupt();
    }
  }

  private Optional<IOException> submitAll(LineSource lines, ExecutorService answering)
      throws InterruptedException {
    try {
      Optional<LineSource.Line> line = lines.next();
      while (line.isPresent()) {
        submit(line.get(), answering);
        line = lines.next();
      }
      return Optional.empty();
    } catch (IOException broken) {
      return Optional.of(broken);
    }
  }

  private void submit(LineSource.Line line, ExecutorService answering) throws InterruptedException {
    int bytes = line.bytes() + 1;
    room.acquire(bytes);
    FutureTask<Answer> task = new FutureTask<>(() -> answer(line));
    queue.put(new Job(Optional.of(task), Optional.empty(), bytes));
    answering.execute(task);
  }

  private boolean write(LongConsumer progress) throws InterruptedException, IOException {
    boolean good = true;
    long done = 0;
    Job job = next();
    while (job.answer().isPresent() && !out.isClosed()) {
      Answer answer = answered(job.answer().get());
      good &= answer.isGood();
      out.line(answer.line());
      room.release(job.bytes());
      progress.accept(++done);
      job = next();
    }
    out.flush();
    if (job.fault().isPresent()) {
      throw job.fault().get();
    }
    return good && !out.isClosed();
  }

  /** The next job; while it isn't there yet, what is written so far is handed on. */
  private Job next() throws InterruptedException {
    Job job = queue.poll();
    if (job == null) {
      out.flush();
      job = queue.take();
    }
    return job;
  }

  private Answer answered(FutureTask<Answer> task) throws InterruptedException {
    if (!task.isDone()) {
      out.flush();
    }
    try {
      return task.get();
    } catch (ExecutionException fault) {
      throw new IllegalStateException("an answer ended without one", fault.getCause());
    }
  }

  private Answer answer(LineSource.Line line) {
    if (line.isTooLong()) {
      return error("The line is longer than " + (LONGEST_LINE >> 20) + " MB.", line);
    }
    try {
      BatchLine asked = BatchLine.read(line.text());
      Answering talk = desk.open(asked.today(), asked.units());
      return new Answer(JsonLine.of(json -> write(json, asked, talk)), true);
    } catch (Unreadable wrong) {
      return error(wrong.getMessage(), line);
    } catch (RuntimeException | StackOverflowError fault) {
      return error(Fault.sentence(fault), line);
    }
  }

  private static Answer error(String sentence, LineSource.Line line) {
    return new Answer(JsonLine.error(sentence, line.number()), false);
  }

  private void write(JsonGenerator json, BatchLine asked, Answering talk) throws IOException {
    json.writeStartObject();
    if (asked.id().isPresent()) {
      json.writeFieldName("id");
      json.writeRawValue(JsonLine.withoutHalfPairs(asked.id().get()));
    }
    json.writeArrayFieldStart("replies");
    for (String turn : asked.turns()) {
      Reply reply = talk.answer(turn);
      new ReplyJson(json).write(reply, PlainText.of(reply, length));
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
