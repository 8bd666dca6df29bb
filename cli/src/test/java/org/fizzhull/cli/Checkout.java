package org.fizzhull.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;

/**
 * A small checkout to start the real launcher in: three build files, two sources, a program of five lines, a stand-in
 * {@code mvn} that logs its call and copies the program into place, and a stand-in Java home that hands on to the real
 * one. The path holds only what the launcher may need, so "missing" means missing.
 */
final class Checkout {
    private static final List<String> TOOLS =
            List.of("find", "ls", "ln", "cp", "mv", "rm", "mkdir", "touch", "tr", "cat", "sleep", "readlink");

    /** Prints its folder and its arguments in angle brackets, and ends with the status that {@code exit N} asks for. */
    private static final String PROGRAM = """
            package org.fizzhull.cli;
            public class Main {
                public static void main(String[] args) {
                    System.out.println(System.getProperty("user.dir"));
                    for (String arg : args) System.out.println("<" + arg + ">");
                    if (args.length > 0 && args[0].equals("exit")) System.exit(Integer.parseInt(args[1]));
                }
            }
            """;

    private static final String MVN = """
            #!/bin/sh
            echo "$*" >>"$LOGS/mvn"
            echo "${LC_ALL:-}" >"$LOGS/locale"
            if [ -n "${MVN_BREAKS:-}" ]; then echo "[ERROR] cannot find symbol"; exit 1; fi
            sleep "${MVN_TAKES:-0}"
            mkdir -p cli/target && cp "$LOGS/program.jar" cli/target/fizzhull.jar && touch cli/target/fizzhull.jar
            """;

    private static final String JAVA = """
            #!/bin/sh
            exec "$REAL_JAVA" "$@"
            """;

    private static final byte[] JAR = compiled();

    final Path root;
    final Path launcher;
    final Path home;
    private final Path logs;
    private final Path bin;

    Checkout(Path folder, String name) throws IOException {
        root = folder.resolve(name);
        logs = Files.createDirectories(folder.resolve("logs"));
        bin = Files.createDirectories(folder.resolve("bin"));
        home = folder.resolve("java home");
        for (String place :
                List.of("pom.xml", "core/pom.xml", "cli/pom.xml", "core/src/main/A.java", "cli/src/main/B.java")) {
            write(root.resolve(place), "x");
        }
        launcher = root.resolve("cli/fizzhull");
        Files.copy(Path.of("fizzhull"), launcher, StandardCopyOption.COPY_ATTRIBUTES);
        script(bin.resolve("mvn"), MVN);
        script(home.resolve("bin/java"), JAVA);
        release("17.0.1+2");
        for (String tool : TOOLS) {
            script(bin.resolve(tool), "#!/bin/sh\nexec '" + onThePath(tool) + "' \"$@\"\n");
        }
        Files.write(logs.resolve("program.jar"), JAR);
    }

    /** What one start printed and how it ended. */
    record Ran(int status, String out, String err) {}

    /** Starts the launcher under the given name, in the given folder. */
    Ran start(Path command, Path folder, Map<String, String> environment, String... arguments) {
        return await(begin(command, folder, environment, arguments));
    }

    /** Starts the launcher by its own name in the root of the checkout. */
    Ran start(String... arguments) {
        return start(launcher, root, Map.of(), arguments);
    }

    Process begin(Path command, Path folder, Map<String, String> environment, String... arguments) {
        List<String> line = new ArrayList<>(List.of(command.toString()));
        line.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(line).directory(folder.toFile());
        Map<String, String> all = new LinkedHashMap<>();
        all.put("PATH", bin.toString());
        all.put("JAVA_HOME", home.toString());
        all.put("LOGS", logs.toString());
        all.put(
                "REAL_JAVA",
                Path.of(System.getProperty("java.home"), "bin", "java").toString());
        all.putAll(environment);
        builder.environment().clear();
        all.forEach((name, value) -> {
            if (!value.isEmpty()) {
                builder.environment().put(name, value);
            }
        });
        try {
            return builder.start();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    static Ran await(Process process) {
        try {
            process.getOutputStream().close();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                throw new IllegalStateException("the launcher does not end");
            }
            return new Ran(process.exitValue(), out, err);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        } catch (InterruptedException trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    /** The calls of the stand-in {@code mvn}, in order. */
    List<String> builds() throws IOException {
        Path log = logs.resolve("mvn");
        return Files.exists(log) ? Files.readAllLines(log) : List.of();
    }

    /** Gives the stand-in Java home another age. */
    void release(String version) throws IOException {
        write(home.resolve("release"), "IMPLEMENTOR=\"none\"\nJAVA_RUNTIME_VERSION=\"" + version + "\"\n");
    }

    void remove(String tool) throws IOException {
        Files.delete(bin.resolve(tool));
    }

    /** Every file below the checkout with its time and size. */
    List<String> inventory() throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(file -> file + " " + file.toFile().lastModified() + " "
                            + file.toFile().length())
                    .sorted()
                    .toList();
        }
    }

    private static byte[] compiled() {
        try {
            Path work = Files.createTempDirectory(Path.of("target"), "program");
            Path source = work.resolve("Main.java");
            write(source, PROGRAM);
            // Without the concatenation of Java 9, which alone would double the start.
            String[] options = {"-XDstringConcat=inline", "-d", work.toString(), source.toString()};
            if (ToolProvider.getSystemJavaCompiler().run(null, null, null, options) != 0) {
                throw new IllegalStateException("the program of the test does not compile");
            }
            Manifest manifest = new Manifest();
            manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
                jar.putNextEntry(new ZipEntry("org/fizzhull/cli/Main.class"));
                Files.copy(work.resolve("org/fizzhull/cli/Main.class"), jar);
            }
            return bytes.toByteArray();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    private static Path onThePath(String tool) {
        return Stream.of(System.getenv("PATH").split(":"))
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(tool + " is not on the path"));
    }

    private static void script(Path file, String text) throws IOException {
        write(file, text);
        if (!file.toFile().setExecutable(true)) {
            throw new IllegalStateException(file + " cannot be made executable");
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
