#!/bin/sh
# Makes the class-data archive anew, which is bound to the place where the folder lies. Without it all works, slower.
set -e
here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
lib=$here/../lib
exec "$here/../runtime/bin/java" -Xshare:dump -Xlog:disable -Xlog:all=error:stderr \
  -XX:SharedClassListFile="$lib/classes.txt" -XX:SharedArchiveFile="$lib/plainsward.jsa" \
  -cp "$lib/plainsward.jar"
