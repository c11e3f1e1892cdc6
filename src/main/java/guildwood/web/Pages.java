package guildwood.web;

import guildwood.kernel.Finding;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;

/** Puts a template and its model on the wire, with what every page needs. */
public final class Pages {
  private final Templates templates;
  private final Messages messages;
  private final Csrf csrf;
  private final boolean demo;

  public Pages(Templates templates, Messages messages, Csrf csrf, boolean demo) {
    this.templates = templates;
    this.messages = messages;
    this.csrf = csrf;
    this.demo = demo;
  }

  public Messages messages() {
    return messages;
  }

  /** Shows a page, or one fragment of it, with the status already set on the context. */
  public void show(Context ctx, String template, Map<String, ?> model) {
    Map<String, Object> all = new HashMap<>(model);
    all.put("csrf", csrf.token(ctx));
    all.put("demo", demo);
    all.put("signedIn", Visitor.of(ctx).isOwner());
    all.put("path", ctx.path());
    all.put("units", Units.of(ctx));
    all.put("notice", Notice.take(ctx, messages));
    ctx.contentType("text/html; charset=utf-8");
    ctx.result(templates.render(template, all));
  }

  /** Shows a form again with what was typed and what is wrong with it, status 422. */
  public void refuse(Context ctx, String template, Map<String, ?> model) {
    ctx.status(422);
    show(ctx, template, model);
  }

  /** Goes on to another page after a change, where a notice tells what was done. */
  public void goOn(Context ctx, String path, Finding notice) {
    Notice.leave(ctx, notice);
    ctx.redirect(path, io.javalin.http.HttpStatus.SEE_OTHER);
  }

  /** Whether htmx asks for a part of the page only. */
  public static boolean wantsFragment(Context ctx) {
    return "true".equals(ctx.header("HX-Request")) && ctx.header("HX-History-Restore-Request") == null;
  }
}
