package org.fizzhull.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.fizzhull.answer.body.RefusalBody;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The contract: status 1 is an internal failure, told on one line and, with --json, by the error object. */
class InternalFailureTest {
    static Throwable[] failures() {
        return new Throwable[] {
            new IllegalStateException("line one\nline two"),
            new StackOverflowError(),
            new OutOfMemoryError("Java heap space"),
            new NoClassDefFoundError("org/fizzhull/shape/Sphere"),
            new NullPointerException(),
            new IllegalArgumentException("x".repeat(5000)),
        };
    }

    @ParameterizedTest
    @MethodSource("failures")
    void isToldOnOneLineAndAsTheErrorObject(Throwable failure) throws Exception {
        Refusal told = InternalFailure.of(failure);

        assertThat(told.getMessage()).doesNotContain("\n").hasSizeLessThan(1000);
        assertThat(told.getMessage()).contains(failure.getClass().getSimpleName());
        assertThat(told.hint()).isNotBlank();
        assertThat(told.code()).isEqualTo("internal-failure");

        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonSink.write(out, new RefusalBody("float", told));
        JsonNode error = new ObjectMapper()
                .readTree(out.toString(StandardCharsets.UTF_8))
                .get("error");
        assertThat(error.get("code").asText()).isEqualTo("internal-failure");
        assertThat(error.get("hint").asText()).isEqualTo(told.hint());
    }
}
