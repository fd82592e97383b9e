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

# One question or a talk starts quickest with the quick compiler; a batch runs long enough for the thorough one.
set -- -jar "$home/lib/plainsward.jar" "$@"
quick="-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
for word do
  case $word in
    --) break ;;
    --batch | --batch=*) quick="-XX:+UseParallelGC" ;;
  esac
done
exec "$home/runtime/bin/java" $quick -XX:-UsePerfData -Xshare:auto \
  -XX:SharedArchiveFile="$home/lib/plainsward.jsa" -Xlog:disable -Xlog:all=error:stderr "$@"
