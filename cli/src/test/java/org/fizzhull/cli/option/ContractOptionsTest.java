package org.fizzhull.cli.option;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.api.Test;

/** The table of options in cli/docs/contract.md, 3, says which commands take each; their help pages say the same. */
class ContractOptionsTest {
    private static final String HEADER = "| options | in | what they say |";
    private static final List<String> ALL =
            List.of("float", "fizz", "dry", "press", "advise", "why", "compare", "batch");
    private static final Pattern OPTION = Pattern.compile("--[a-z-]+");
    private static final Pattern COMMAND = Pattern.compile("`([a-z]+)`");

    @Test
    void everyOptionIsTakenWhereThePageSaysSo() throws IOException {
        Map<String, String> help = new HashMap<>();
        ALL.forEach(
                command -> help.put(command, CommandRun.of(command, "--help").out()));
        List<String> rows = Files.readString(Path.of("docs", "contract.md"))
                .lines()
                .dropWhile(line -> !line.equals(HEADER))
                .skip(2)
                .takeWhile(line -> line.startsWith("|"))
                .toList();
        assertThat(rows).isNotEmpty();
        for (String row : rows) {
            String[] cells = row.substring(2).split(" \\| ", -1);
            List<String> told = cells[1].equals("all")
                    ? ALL
                    : COMMAND.matcher(cells[1])
                            .results()
                            .map(command -> command.group(1))
                            .toList();
            Matcher options = OPTION.matcher(cells[0]);
            while (options.find()) {
                Pattern line = Pattern.compile("(?m)^  " + options.group() + "( |$)");
                assertThat(ALL.stream()
                                .filter(command ->
                                        line.matcher(help.get(command)).find()))
                        .as(options.group())
                        .hasSameElementsAs(new TreeSet<>(told));
            }
        }
    }
}
