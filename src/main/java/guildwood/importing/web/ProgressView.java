package guildwood.importing.web;

import guildwood.importing.web.ImportJobs.Job;
import guildwood.web.Pages;
import io.javalin.http.Context;
import java.util.Map;

/**
 * The page that watches long work.
 *
 * @param path of the page itself; {@code path/stop} stops the work
 * @param what key of what is being done
 */
record ProgressView(Pages pages, String path, String what) {
  void show(Context ctx, Job job) {
    Map<String, Object> model = Map.of("path", path, "what", what, "title", job.title(), "rows", job.rows(), "allRows", job.allRows(),
        "stopping", job.isCancelled());
    pages.show(ctx, Pages.wantsFragment(ctx) ? "importing/progress :: progress" : "importing/progress", model);
  }
}
