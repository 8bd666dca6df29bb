#!/bin/sh
# Wall time and peak memory of reading and measuring an STL of a million facets against admesh on the same file: medians
# of runs taken in turn, for facets in neighbour order and shuffled. Ours starts as the launcher starts: jar, class-data
# archive made by a training run, the same options. Needs a build (mvn -pl validation -am test-compile), admesh and GNU time.
set -eu
runs=${1:-11}
root=$(CDPATH= cd -P -- "$(dirname -- "$0")/../../.." && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
main=org.fizzhull.validation.speed.MeasureStl
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
options="-Xlog:disable -XX:TieredStopAtLevel=1 -XX:Tier3MinInvocationThreshold=5 -XX:+UseG1GC -XX:-UsePerfData"
options="$options -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0"

mkdir "$work/classes"
cp -r "$root/core/target/classes/org" "$work/classes"
(cd "$root/validation/target/test-classes" && cp --parents org/fizzhull/validation/speed/MeasureStl*.class "$work/classes")
${JAVA_HOME:+$JAVA_HOME/bin/}jar cf "$work/measure.jar" -C "$work/classes" .
# shellcheck disable=SC2086 # options are split at spaces on purpose
{
    $java $options -cp "$work/measure.jar" $main make "$work/small.stl" 20 10
    $java $options -cp "$work/measure.jar" $main make "$work/order.stl" 1000 500
    $java $options -cp "$work/measure.jar" $main shuffle "$work/order.stl" "$work/shuffled.stl"
    $java $options -XX:DumpLoadedClassList="$work/list" -cp "$work/measure.jar" $main "$work/small.stl" >"$work/out"
    $java -Xlog:disable -Xshare:dump -XX:+UseG1GC -XX:SharedClassListFile="$work/list" \
        -XX:SharedArchiveFile="$work/measure.jsa" -cp "$work/measure.jar" >"$work/out"
}
offer=/sys/kernel/mm/transparent_hugepage/enabled
if [ -r "$offer" ] && ! grep -q '\[never\]' "$offer"; then options="$options -XX:+UseTransparentHugePages"; fi

# One run of the command after the name: seconds and kibibytes to the file of that name.
clock() {
    name=$1
    shift
    began=$(date +%s%N)
    /usr/bin/time -o "$work/memory" -f %M "$@" >"$work/out"
    ended=$(date +%s%N)
    [ -z "$name" ] || echo "$(((ended - began) / 1000)) $(cat "$work/memory")" >>"$work/$name"
}
median() { sort -n | awk '{ x[NR] = $1 } END { print (x[int((NR + 1) / 2)] + x[int((NR + 2) / 2)]) / 2 }'; }
for order in order shuffled; do
    run=0
    while [ "$run" -le "$runs" ]; do
        # The first run of each warms the file cache.
        [ "$run" -gt 0 ] && ours=ours.$order && theirs=theirs.$order || { ours= && theirs=; }
        # shellcheck disable=SC2086
        clock "$ours" $java $options -XX:SharedArchiveFile="$work/measure.jsa" -cp "$work/measure.jar" $main \
            "$work/$order.stl"
        clock "$theirs" admesh "$work/$order.stl"
        run=$((run + 1))
    done
    file=$(wc -c <"$work/$order.stl")
    paste -d' ' "$work/ours.$order" "$work/theirs.$order" | awk '{ print $1 / $3 }' >"$work/ratio"
    awk -v name="$order" -v file="$file" -v a="$(median <"$work/ours.$order")" -v b="$(median <"$work/theirs.$order")" \
        -v r="$(median <"$work/ratio")" \
        -v am="$(awk '{ print $2 }' "$work/ours.$order" | median)" \
        -v bm="$(awk '{ print $2 }' "$work/theirs.$order" | median)" 'BEGIN {
            printf "%-8s ours %.0f ms, admesh %.0f ms, ratio %.2f; peak %.0f MiB (%.1f times the file), admesh %.0f MiB\n",
                name, a / 1000, b / 1000, r, am / 1024, am * 1024 / file, bm / 1024 }'
done
