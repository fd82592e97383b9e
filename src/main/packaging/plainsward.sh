#!/bin/sh
# Starts Plainsward on the Java that lies beside it. Nothing on the PATH is needed.
self=$0
while [ -h "$self" ]; do
  self=$(readlink -f -- "$self") || exit 1
done
case $self in
  */*) here=${self%/*} ;;
  *) here=. ;;
esac
home=$here/..

# One question or a talk starts quickest with the quick compiler, with the collector that can take objects out of the
# archive, and with the archive where it was made for; a batch runs long enough for the thorough compiler, which is told
# to put less of one method into another: with its usual measure it is busy for minutes and gains nothing by it.
set -- -cp "$home/lib/plainsward.jar" plainsward.terminal.Main "$@"
quick="-XX:TieredStopAtLevel=1 -XX:+UseG1GC -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0"
for word do
  case $word in
    --) break ;;
    --batch | --batch=*) quick="-XX:+UseParallelGC -XX:InlineSmallCode=1000 -XX:FreqInlineSize=150" ;;
  esac
done
exec "$home/runtime/bin/java" $quick -XX:-UsePerfData -Xshare:auto -Dplainsward.ready=true \
  -XX:SharedArchiveFile="$home/lib/plainsward.jsa" -Xlog:disable -Xlog:all=error:stderr "$@"
