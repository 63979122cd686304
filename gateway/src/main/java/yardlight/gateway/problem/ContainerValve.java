package yardlight.gateway.problem;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.core.Ordered;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;

/** The last net: what the server refuses before any of our filters has seen it. A fixed text, so that nothing can leak. */
final class ContainerValve extends ErrorReportValve {

    @Override
    protected void report(Request request, Response response, Throwable thrown) {
        int code = response.getStatus();
        if (code < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
            return;
        }
        HttpStatus status = HttpStatus.resolve(code);
        String title = status == null ? "Error" : status.getReasonPhrase();
        String body =
                "{\"title\":\"%s\",\"status\":%d,\"detail\":\"the request cannot be read\"}".formatted(title, code);
        try {
            SafeHeaders.bare(response);
            response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
            response.getOutputStream().write(body.getBytes(StandardCharsets.UTF_8));
            response.finishResponse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Comes after the one that Boot adds, and so nearer to the request: the nearer one reports. */
    @Component
    static final class Mounting implements WebServerFactoryCustomizer<TomcatServletWebServerFactory>, Ordered {

        @Override
        public void customize(TomcatServletWebServerFactory factory) {
            factory.addContextCustomizers(
                    context -> context.getParent().getPipeline().addValve(new ContainerValve()));
        }

        @Override
        public int getOrder() {
            return Ordered.LOWEST_PRECEDENCE;
        }
    }
}
