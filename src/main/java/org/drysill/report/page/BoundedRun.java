package org.drysill.report.page;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Fills a template of a user's own within limits of time, depth and memory. */
final class BoundedRun {
  private final Duration most;

  BoundedRun(Duration most) {
    this.most = most;
  }

  /**
   * What a task yields.
   *
   * @throws TemplateProblem where it takes too long, calls itself too often or asks for too much
   *     memory
   */
  String of(Supplier<String> task) {
    FutureTask<String> future = new FutureTask<>(task::get);
    // A task that cannot be stopped must not keep the program from ending.
    Thread thread = new Thread(future, "own templates");
    thread.setDaemon(true);
    thread.start();
    try {
      return future.get(most.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      future.cancel(true);
      throw new TemplateProblem(
          "own templates take longer than "
              + most.toSeconds()
              + " s; is there a loop without end?");
    } catch (InterruptedException e) {
      future.cancel(true);
      Thread.currentThread().interrupt();
      throw new TemplateProblem("the own templates were interrupted");
    } catch (ExecutionException e) {
      throw unwrapped(e.getCause());
    }
  }

  private static RuntimeException unwrapped(Throwable cause) {
    if (cause instanceof StackOverflowError) {
      return new TemplateProblem("own templates: a macro or function calls itself without end");
    }
    if (cause instanceof OutOfMemoryError) {
      return new TemplateProblem("own templates ask for more memory than there is");
    }
    return cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
  }
}
