package guildwood.importing.web;

import guildwood.importing.DataRows;
import guildwood.importing.ImportDraft;
import guildwood.importing.ImportPlan;
import guildwood.importing.Table;
import guildwood.importing.exchange.RejectedRows;
import guildwood.importing.exchange.KeptReview;
import guildwood.importing.exchange.ReviewedCell;
import guildwood.importing.exchange.UnreadByRow;
import guildwood.web.Access;
import guildwood.web.Messages;
import guildwood.web.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a draft with cells that cannot be read, as a file to mend and bring again. */
final class RejectedRoute implements Routes {
  private final Messages messages;
  private final ImportDesk desk;

  RejectedRoute(Messages messages, ImportDesk desk) {
    this.messages = messages;
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/import/{id}/unread.csv", desk.unlessBrought(this::send), Access.OWNER);
  }

  private void send(Context ctx) {
    ImportDraft draft = desk.draft(ctx);
    KeptReview review = desk.review(draft).orElseThrow(NotFoundResponse::new);
    Table table = desk.table(draft).value().orElseThrow(NotFoundResponse::new);
    ImportPlan plan = new ImportPlan(draft.mapping().orElseThrow(), draft.source().orElseThrow(), draft.decisions());
    ctx.contentType("text/csv; charset=utf-8; header=present");
    ctx.header("Content-Disposition", "attachment; filename=\"unread-rows.csv\"");
    try (Writer to = new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8)) {
      RejectedRows rejected = new RejectedRows(to, plan.mapping().heading());
      UnreadByRow unread = new UnreadByRow(review);
      DataRows.of(table, plan).rows(row -> {
        List<ReviewedCell> cells = unread.of(row.number());
        if (!cells.isEmpty()) {
          rejected.add(row, cells.stream().map(this::reason).toList());
        }
        return !unread.isDone();
      });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String reason(ReviewedCell cell) {
    String why = messages.say(cell.reason());
    return cell.isWholeRow() ? why : messages.say("topic", cell.header(), why);
  }
}
