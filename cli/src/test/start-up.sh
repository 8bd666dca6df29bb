#!/bin/sh
# Wall time of one short answer against a bare "java Hello": medians of ten runs each, taken in turn.
set -eu
here=$(CDPATH= cd -P -- "$(dirname -- "$0")/../.." && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cat >"$work/Hello.java" <<'JAVA'
import java.util.Arrays;

public class Hello {
    /** Without arguments the yardstick; with them the watch: runs the two commands in turn. */
    public static void main(String[] args) throws Exception {
        if (args.length == 0) {
            System.out.println("Hello");
            return;
        }
        int runs = 10;
        String java = System.getProperty("java.home") + "/bin/java";
        String[] hello = {java, "-cp", args[1], "Hello"};
        String[] answer = {args[0], "float", "--shape", "sphere(diameter=65 mm)", "--mass", "138 g", "--json"};
        double[] a = new double[runs];
        double[] b = new double[runs];
        for (int i = -1; i < runs; i++) {
            double plain = milliseconds(hello);
            double full = milliseconds(answer);
            if (i >= 0) {
                a[i] = plain;
                b[i] = full;
            }
        }
        System.out.printf("java Hello %.0f ms, float %.0f ms: %.2f times%n", median(a), median(b), median(b) / median(a));
    }

    static double milliseconds(String[] command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        long start = System.nanoTime();
        Process process = builder.start();
        process.getInputStream().readAllBytes();
        int status = process.waitFor();
        long end = System.nanoTime();
        if (status != 0) throw new IllegalStateException(command[0] + " ended with " + status);
        return (end - start) / 1e6;
    }

    static double median(double[] x) {
        Arrays.sort(x);
        return (x[x.length / 2] + x[(x.length - 1) / 2]) / 2;
    }
}
JAVA
javac -d "$work" "$work/Hello.java"
java -cp "$work" Hello "$here/fizzhull" "$work"
