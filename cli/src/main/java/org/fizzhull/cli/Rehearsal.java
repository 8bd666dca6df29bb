package org.fizzhull.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.program.Program;

/**
 * Runs a typical line of each command, as the build does before it puts the packaged program in place: one that does not
 * answer stops the build, and the classes that they load make the class-data archive from which the program starts.
 */
public final class Rehearsal {
    private static final String RECIPE = """
            recipe: rehearsal
            dry:
              sodium bicarbonate: 300 g
              citric acid: 150 g
              corn starch: 60 g
            wet:
              sunflower oil: 10 g
              water: 4 g
            prices:
              sodium bicarbonate: 2.40 / kg
            limits:
              sunflower oil: 5 %
            """;

    private static final String CATALOGUE = """
            name,shape
            ball,sphere(diameter=65 mm)
            dome,dome(diameter=80 mm)
            bowl,"bowl(diameter=90 mm, wall=15 mm)"
            geode,"geode(diameter=80 mm, wall=14 mm, crystals=20 g)"
            puck,"puck(diameter=70 mm, height=30 mm)"
            egg,"egg(length=70 mm, diameter=50 mm)"
            ring,"ring(diameter=90 mm, tube=30 mm)"
            cube,cube(side=50 mm)
            cone,"cone(diameter=60 mm, height=70 mm)"
            capsule,"capsule(length=80 mm, diameter=35 mm)"
            star,"star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)"
            heart,"heart(width=70 mm, height=28 mm)"
            """;

    private static final String TRIALS = """
            mould,bath_g,bath_C,result,fizz_s
            sphere(diameter=65 mm),138,38,floated,215
            sphere(diameter=65 mm),141,38,floated,222
            """;

    private static final String BALL = "sphere(diameter=65 mm)";

    private static final String TETRAHEDRON = """
            solid body
            facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 30 0 vertex 30 0 0 endloop endfacet
            facet normal 0 0 0 outer loop vertex 0 0 0 vertex 30 0 0 vertex 0 0 30 endloop endfacet
            facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 0 30 vertex 0 30 0 endloop endfacet
            facet normal 0 0 0 outer loop vertex 30 0 0 vertex 0 30 0 vertex 0 0 30 endloop endfacet
            endsolid body
            """;

    private Rehearsal() {}

    /** A line about a ball that dries before the bath, with few draws. */
    private static String[] dried(String command, String recipe, String... more) {
        List<String> line = new ArrayList<>(List.of(command, "--recipe", recipe, "--shape", BALL));
        line.addAll(List.of("--air", "21 C, 50 %", "--dry-for", "3 d", "--samples", "128"));
        line.addAll(List.of(more));
        return line.toArray(String[]::new);
    }

    /**
     * Ends with status 0 where every line answers.
     *
     * @param words a folder for the files of the lines
     */
    public static void main(String[] words) throws IOException {
        Path folder = Files.createDirectories(Path.of(words[0]));
        String recipe = Files.writeString(folder.resolve("recipe.yaml"), RECIPE).toString();
        String moulds =
                Files.writeString(folder.resolve("moulds.csv"), CATALOGUE).toString();
        String trials = Files.writeString(folder.resolve("trials.csv"), TRIALS).toString();
        String bench = folder.resolve("bench.yaml").toString();
        String body = Files.writeString(folder.resolve("body.stl"), TETRAHEDRON).toString();
        String picture = folder.resolve("picture.svg").toString();
        List<String[]> lines = List.of(
                new String[] {"float", "--shape", BALL, "--mass", "138 g", "--json"},
                new String[] {"float", "--shape", BALL, "--mass", "138 g", "--chart", picture},
                new String[] {"float", "--shape", BALL, "--mass", "142 g", "--measured-rise", "95 s at 150 g"},
                new String[] {"float", "--shape", BALL, "--recipe", recipe, "--fill", "137 g", "--samples", "128"},
                dried("float", recipe, "--fill", "137 g +- 3 g", "--chart", picture),
                dried("dry", recipe, "--fill", "137 g", "--chart", picture),
                dried("compare", recipe, "--press", "firm", "--moulds", moulds),
                dried("advise", recipe, "--fill", "137 g +- 3 g"),
                dried("why", recipe, "--fill", "137 g +- 3 g", "--saw", "sank", "--seen", "across 65 mm, 149 g"),
                new String[] {"fizz", "--shape", BALL, "--recipe", recipe, "--mass", "150 g", "--samples", "128"},
                new String[] {"press", "--shape", BALL, "--recipe", recipe, "--press", "firm", "--samples", "128"},
                new String[] {"learn", "--trials", trials, "--out", bench},
                new String[] {"float", "--shape", BALL, "--mass", "138 g", "--bench", bench},
                new String[] {"float", "--shape", "dome(diameter=80 mm)", "--mass", "120 g", "--samples", "128"},
                new String[] {"shapes"},
                new String[] {"shapes", "bowl(diameter=90 mm, wall=15 mm)", "--json"},
                new String[] {"shapes", "mesh(file=\"" + body + "\", unit=mm)"},
                new String[] {"ingredients", "kaolin"},
                new String[] {"--help"});
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false);
        for (String[] line : lines) {
            int status = new Program(nowhere, System.err).run(line);
            if (status != Program.ANSWERED) {
                System.exit(status);
            }
        }
        new Program(nowhere, nowhere).run("float");
        Main.main(new String[] {"--version"});
    }
}
