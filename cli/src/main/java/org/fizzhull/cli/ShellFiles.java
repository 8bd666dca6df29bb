package org.fizzhull.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fizzhull.answer.body.Version;
import org.fizzhull.cli.program.CommandPages;
import org.fizzhull.cli.shell.BashCompletion;
import org.fizzhull.cli.shell.CommandPage;
import org.fizzhull.cli.shell.ManualPage;
import org.fizzhull.cli.shell.ZshCompletion;

/** Writes the files of the release archive that the options of the commands make: completion and the manual page. */
public final class ShellFiles {
    private ShellFiles() {}

    /**
     * Writes {@code completion/fizzhull.bash}, {@code completion/_fizzhull} and {@code man/fizzhull.1}.
     *
     * @param words the folder in which they go
     */
    public static void main(String[] words) throws IOException {
        List<CommandPage> commands = CommandPages.all();
        Path completion = Files.createDirectories(Path.of(words[0], "completion"));
        Files.writeString(completion.resolve("fizzhull.bash"), BashCompletion.of(commands));
        Files.writeString(completion.resolve("_fizzhull"), ZshCompletion.of(commands));
        Path manual = Files.createDirectories(Path.of(words[0], "man"));
        Files.writeString(manual.resolve("fizzhull.1"), ManualPage.of(Version.TEXT, commands));
    }
}
