package guildwood.web;

import io.javalin.http.Context;
import io.javalin.rendering.FileRenderer;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.TemplateSpec;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.linkbuilder.StandardLinkBuilder;
import org.thymeleaf.messageresolver.AbstractMessageResolver;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Thymeleaf outside a servlet container: its own texts and links. */
public final class Templates implements FileRenderer {
  private final TemplateEngine engine = new TemplateEngine();

  public Templates(Messages messages) {
    ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
    resolver.setPrefix("guildwood/templates/");
    resolver.setSuffix(".html");
    resolver.setTemplateMode(TemplateMode.HTML);
    resolver.setCharacterEncoding("UTF-8");
    engine.setTemplateResolver(resolver);
    engine.setMessageResolver(new BundleTexts(messages));
    engine.setLinkBuilder(new RootLinks());
  }

  /** Renders {@code species/detail} whole, or one fragment of it written {@code species/detail :: table}. */
  @Override
  public String render(String template, Map<String, ? extends Object> model, Context ctx) {
    return render(template, model);
  }

  public String render(String template, Map<String, ? extends Object> model) {
    var context = new org.thymeleaf.context.Context(Locale.ENGLISH);
    model.forEach(context::setVariable);
    int fragment = template.indexOf(" :: ");
    TemplateSpec spec = fragment < 0
        ? new TemplateSpec(template, TemplateMode.HTML)
        : new TemplateSpec(template.substring(0, fragment), Set.of(template.substring(fragment + 4)),
            TemplateMode.HTML, Map.of());
    return engine.process(spec, context);
  }

  private static final class BundleTexts extends AbstractMessageResolver {
    private final Messages messages;

    BundleTexts(Messages messages) {
      this.messages = messages;
    }

    @Override
    public String resolveMessage(ITemplateContext context, Class<?> origin, String key, Object[] args) {
      return messages.say(key, args == null ? new Object[0] : args);
    }

    @Override
    public String createAbsentMessageRepresentation(
        ITemplateContext context, Class<?> origin, String key, Object[] args) {
      throw new IllegalArgumentException("no text for " + key);
    }
  }

  private static final class RootLinks extends StandardLinkBuilder {
    @Override
    protected String computeContextPath(IExpressionContext context, String base, Map<String, Object> parameters) {
      return "";
    }
  }
}
