package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.cli.Option;
import org.fizzhull.cli.option.OptionLists;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Completion and manual page say every command and option, and the shell takes what is said. */
class ShellFilesTest {
    @TempDir
    static Path folder;

    @BeforeAll
    static void write() throws IOException {
        ShellFiles.main(new String[] {folder.toString()});
    }

    @Test
    void sayEveryOptionOfEveryCommand() throws IOException {
        List<String> bash = Files.readAllLines(folder.resolve("completion/fizzhull.bash"));
        String zsh = Files.readString(folder.resolve("completion/_fizzhull"));
        String manual = Files.readString(folder.resolve("man/fizzhull.1"));
        for (String command : OptionLists.commands()) {
            String line = bash.stream()
                    .filter(each -> each.strip().startsWith(command + ") words="))
                    .findFirst()
                    .orElseThrow();
            String part = section(zsh, "        " + command + ")\n", ";;");
            String page = section(manual, ".SS " + command, ".SS ");
            for (Option option : OptionLists.of(command)) {
                String name = "--" + option.getLongOpt();
                assertThat(List.of(line.replaceAll(".*\"(.*)\".*", "$1").split(" ")))
                        .contains(name);
                assertThat(part).contains("'*" + name + "[");
                assertThat(page).contains(".B " + name.replace("-", "\\-"));
            }
        }
    }

    /** The shell itself completes; where there is no bash, nothing is claimed. */
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void bashCompletes() throws Exception {
        assertThat(completed("fizzhull", "flo")).isEqualTo("float");
        assertThat(completed("fizzhull", "float", "--mas")).isEqualTo("--mass");
        assertThat(completed("fizzhull", "shapes", "--mas")).isEmpty();
        assertThat(completed("fizzhull", "float", "--recipe", "a")).isEmpty();
    }

    private static String completed(String... words) throws Exception {
        StringBuilder script =
                new StringBuilder("source '" + folder.resolve("completion/fizzhull.bash") + "'; COMP_WORDS=(");
        for (String word : words) {
            script.append('\'').append(word).append("' ");
        }
        script.append("); COMP_CWORD=").append(words.length - 1).append("; _fizzhull; echo \"${COMPREPLY[*]}\"");
        Process bash = new ProcessBuilder("bash", "-u", "-c", script.toString())
                .redirectErrorStream(true)
                .start();
        String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(bash.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return out.strip();
    }

    private static String section(String text, String from, String to) {
        int start = text.indexOf(from);
        assertThat(start).as(from).isNotNegative();
        int end = text.indexOf(to, start + from.length());
        return text.substring(start, end < 0 ? text.length() : end);
    }
}
