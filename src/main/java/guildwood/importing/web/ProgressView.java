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
 * @param allRows how many rows there are; 0 where nobody knows yet
 */
record ProgressView(Pages pages, String path, String what, String title, long allRows) {
  void show(Context ctx, Job job) {
    Map<String, Object> model = Map.of("path", path, "what", what, "title", title, "rows", job.rows(), "allRows", allRows,
        "stopping", job.isCancelled());
    pages.show(ctx, Pages.wantsFragment(ctx) ? "importing/progress :: progress" : "importing/progress", model);
  }
}
