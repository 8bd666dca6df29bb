package org.fizzhull.doors;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.hours;
import static org.fizzhull.quantity.Units.millimetres;
import static org.fizzhull.quantity.Units.percent;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fizzhull.chain.Mix;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Adviser;
import org.fizzhull.decide.why.Diagnoser;
import org.fizzhull.decide.why.Seen;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Every door of the library, tried with null for each of its references and with what is no number for each of its numbers,
 * the other arguments being valid: it is refused then and there, and a missing component of a record by its name. Expected by
 * definition of a refusal: {@link IllegalArgumentException} or, of null, {@link NullPointerException}; a method that returns a
 * number may give NaN for NaN, as {@link Math} does.
 */
class LibraryDoorsTest {
    private static final Sampling FEW = new Sampling(1, 128);

    /** Tries to find valid arguments of a door. */
    private static final int TRIES = 60;

    /**
     * Doors that are no embedder's, or that look at nothing they are given, each with its reason. A pattern is one of
     * {@code package.Type.method}, or {@code package.Type.Type} of a constructor.
     */
    private static final List<String> LEFT_OUT = List.of(
            // what draws say, put together by the models alone
            "forecast\\.result\\..*",
            "forecast\\.measured\\.MeasurementEffect.*",
            // what is worked out in inner loops and handed on inside the library; a shape is looked at where it is
            // asked about
            "geometry\\..*",
            "mesh\\..*",
            "shape\\.(meshed|load)\\..*",
            "voyage\\.result\\..*",
            "drying\\.DryingCourse.State\\..*",
            "decide\\.advise\\.Advice.Appraisal.*",
            "recipe\\.(Blend.Moles|Lookup.*)\\..*",
            "uncertainty\\.(Workers.Task|Workers.Watch|Prior)\\..*",
            // shapes that are alike on tray and rack
            "shape\\.Shape\\.(depthProfile|diffusionTime)",
            "forecast\\.making\\.Moulded.Pressed\\.weighing",
            // a mass is refused by the question, with the range of its shape, and a course is never at what is no
            // weight
            "forecast\\.making\\.Making.Weighed\\..*",
            "drying\\.DryingCourse\\.whenWeighing",
            // an answer for what is not known, and the usual scale of a piece that is on none
            "recipe\\.Ingredient\\.(value|relativeSigma)",
            "forecast\\.prior\\.Scale\\.usual",
            // what the library tells of a change, made by the search alone
            "decide\\.(advise\\.Change.*|why\\.Why.*)",
            // writers of keys and words of refusals: what they are given is text to be shown
            "answer\\.tree\\..*",
            "quantity\\.Allowed\\..*");

    private static final Pattern OUT = Pattern.compile(String.join("|", LEFT_OUT));

    private final Samples samples = new Samples();
    private final List<String> wrong = new ArrayList<>();
    private int tried;

    @Test
    void everyDoorRefusesWhatIsMissingAndWhatIsNoNumber() throws Exception {
        LibraryDoors library = new LibraryDoors();
        gather(library);
        int reached = 0;
        List<Executable> doors = library.doors();
        doors.removeIf(door -> OUT.matcher(name(door)).matches());
        for (Executable door : doors) {
            reached += attempt(door) ? 1 : 0;
        }
        assertThat(wrong).isEmpty();
        // guards against a test that finds no arguments any more
        assertThat(reached).isGreaterThan(doors.size() * 2 / 3);
        assertThat(tried).isGreaterThan(500);
    }

    /** Finds valid arguments and spoils one after the other; false where none were found. */
    private boolean attempt(Executable door) throws IllegalAccessException, InstantiationException {
        Random random = new Random(door.toGenericString().hashCode());
        for (int k = 0; k < TRIES; k++) {
            Object on = null;
            if (door instanceof Method method && !Modifier.isStatic(method.getModifiers())) {
                on = Samples.any(samples.of(method.getDeclaringClass()), random);
                if (on == null) {
                    return false;
                }
            }
            Object[] arguments = arguments(door, random, k);
            try {
                call(door, on, arguments);
            } catch (InvocationTargetException | NullPointerException | IllegalArgumentException notValid) {
                continue;
            }
            for (int i = 0; i < arguments.length; i++) {
                spoil(door, on, arguments, i);
            }
            return true;
        }
        return false;
    }

    /** Components of a record that there is, else what the types tell. */
    private @Nullable Object[] arguments(Executable door, Random random, int attempt) throws IllegalAccessException {
        Class<?> type = door.getDeclaringClass();
        List<Object> made = samples.of(type);
        boolean canonical = door instanceof Constructor<?>
                && type.isRecord()
                && type.getRecordComponents().length == door.getParameterCount();
        Type[] types = door.getGenericParameterTypes();
        @Nullable Object[] arguments = new @Nullable Object[door.getParameterCount()];
        for (int i = 0; i < arguments.length; i++) {
            if (canonical && attempt < made.size()) {
                try {
                    arguments[i] = type.getRecordComponents()[i].getAccessor().invoke(made.get(attempt));
                } catch (InvocationTargetException none) {
                    throw new AssertionError(none);
                }
            } else {
                arguments[i] = samples.argument(types[i], random);
            }
        }
        return arguments;
    }

    private void spoil(Executable door, @Nullable Object on, Object[] valid, int place)
            throws IllegalAccessException, InstantiationException {
        Class<?> type = door.getParameterTypes()[place];
        boolean mayBeNull = Stream.of(door.getAnnotatedParameterTypes()[place].getAnnotations())
                .anyMatch(annotation ->
                        annotation.annotationType().getSimpleName().equals("Nullable"));
        if ((type.isPrimitive() && type != double.class) || mayBeNull) {
            return;
        }
        Object[] spoilt = valid.clone();
        spoilt[place] = type == double.class ? Double.NaN : null;
        tried++;
        String what = name(door) + " with " + spoilt[place] + " for " + named(door, place);
        try {
            Object answer = call(door, on, spoilt);
            if (!(type == double.class && answer instanceof Double number && door instanceof Method)) {
                wrong.add(what + " is accepted");
            } else if (!isRelation(door) && !Double.isNaN(number)) {
                wrong.add(what + " gives " + answer);
            }
        } catch (InvocationTargetException e) {
            Throwable refused = Objects.requireNonNull(e.getCause());
            boolean good = refused instanceof IllegalArgumentException
                    || (type != double.class && refused instanceof NullPointerException);
            String message = String.valueOf(refused.getMessage()).toLowerCase(Locale.ROOT);
            if (!good) {
                wrong.add(what + " ends in " + refused);
            } else if (type != double.class && door instanceof Constructor<?> && !names(message, named(door, place))) {
                wrong.add(what + " is refused without its name: " + message);
            }
        }
    }

    /** A function of numbers alone, such as a published relation or a change of units. */
    private static boolean isRelation(Executable door) {
        return Modifier.isStatic(door.getModifiers())
                && Stream.of(door.getParameterTypes()).allMatch(Class::isPrimitive);
    }

    private static @Nullable Object call(Executable door, @Nullable Object on, Object[] arguments)
            throws IllegalAccessException, InstantiationException, InvocationTargetException {
        return door instanceof Constructor<?> made
                ? made.newInstance(arguments)
                : ((Method) door).invoke(on, arguments);
    }

    private static String name(Executable door) {
        Class<?> type = door.getDeclaringClass();
        return type.getName().substring("org.fizzhull.".length()).replace('$', '.')
                + '.'
                + (door instanceof Constructor<?> ? type.getSimpleName() : door.getName());
    }

    /** Name of an argument, where the compiler kept it. */
    private static String named(Executable door, int place) {
        Class<?> type = door.getDeclaringClass();
        boolean canonical = door instanceof Constructor<?>
                && type.isRecord()
                && type.getRecordComponents().length == door.getParameterCount();
        return canonical ? type.getRecordComponents()[place].getName() : "";
    }

    /** Whether a word of the name stands in the message; true of an argument whose name is not known. */
    private static boolean names(String message, String name) {
        return name.isEmpty()
                || Stream.of(name.split("(?=[A-Z])")).anyMatch(word -> message.contains(word.toLowerCase(Locale.ROOT)));
    }

    /** Values of the library: an answer of each predictor, and what each factory without arguments gives. */
    private void gather(LibraryDoors library) throws IllegalAccessException {
        Bath bath = Bath.at(celsius(38));
        Shape ball = ShapeText.read("sphere(diameter=65 mm)");
        List.of(
                        "dome(diameter=80 mm)",
                        "bowl(diameter=90 mm, wall=15 mm)",
                        "geode(diameter=80 mm, wall=14 mm, crystals=20 g)",
                        "puck(diameter=70 mm, height=30 mm)",
                        "egg(length=70 mm, diameter=50 mm)",
                        "ring(diameter=90 mm, tube=30 mm)",
                        "block(length=60 mm, width=40 mm, height=30 mm)",
                        "cone(diameter=60 mm, height=70 mm)",
                        "capsule(length=80 mm, diameter=35 mm)",
                        "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                        "heart(width=70 mm, height=28 mm)",
                        "filled(water=143 g, like=sphere)")
                .forEach(text -> samples.gather(ShapeText.read(text)));
        DryingConditions rack = DryingConditions.open(RoomAir.of(celsius(21), percent(55)), hours(36));
        var dried = Mix.of(lemon()).fill(ball, grams(137)).dry(rack);
        Design design = new Design(
                Optional.of(lemon()),
                ball,
                new Design.Filling.Fill(grams(150), Optional.of(Priors.normal(0, grams(3)))),
                Optional.of(rack),
                bath,
                Question.IntoBath.DROPPED,
                false,
                Measured.CALIPERS,
                Scale.usual(grams(150)));
        FloatPredictor floats = FloatPredictor.standard().with(FEW);
        FizzPredictor fizz = FizzPredictor.standard().with(FEW);
        for (Object value : List.of(
                FEW,
                floats,
                fizz,
                DryPredictor.standard().with(FEW),
                PressPredictor.standard().with(FEW),
                JointPredictor.standard().with(FEW),
                Adviser.standard().with(FEW),
                Diagnoser.standard().with(FEW),
                ball,
                bath,
                rack,
                lemon(),
                Blend.of(lemon()),
                dried,
                design,
                design.drying(),
                Seen.nothing().with(Why.Check.WEIGH_A_PIECE, 0.151),
                Observations.none()
                        .rose(TimedPiece.rose(95).weighing(grams(150)).leaving(millimetres(50))),
                floats.forecast(dried.question()),
                fizz.forecast(dried.question()))) {
            samples.gather(value);
        }
        for (Class<?> type : library.types()) {
            for (Method method : type.getDeclaredMethods()) {
                boolean factory = Modifier.isStatic(method.getModifiers())
                        && Modifier.isPublic(method.getModifiers())
                        && method.getParameterCount() == 0
                        && !method.getReturnType().isPrimitive();
                if (factory) {
                    try {
                        samples.gather(method.invoke(null));
                    } catch (InvocationTargetException none) {
                        throw new AssertionError(method.toString(), none);
                    }
                }
            }
        }
    }

    private static Recipe lemon() {
        return new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .name("Lighthouse lemon")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "4 g")
                .build();
    }
}
