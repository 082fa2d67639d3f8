#!/bin/sh
# pairs.sh COMMIT [WEEKS] [PAIRS]: the processor time of a build by the program as it is
# here and as it was at a commit, run side by side into a disk of memory, so that both
# meet the same other work. Each builds its own example's weeks again and again, in the
# twelve languages. Prints user and system seconds, peak of memory and pages.
set -eu
commit=$1 weeks=${2:-400} pairs=${3:-5}
work=$(mktemp -d) fast=$(mktemp -d -p /dev/shm)
trap 'rm -rf "$work" "$fast"; git worktree prune' EXIT
git worktree add -q --detach "$work/then" "$commit"
(cd "$work/then" && go build -trimpath -o "$work/homebuild-then" ./cmd/homebuild)
go build -trimpath -o "$work/homebuild-now" ./cmd/homebuild

school() { # FROM ENDING TO
  mkdir -p "$3/weeks"
  printf 'name = "Pebble Lane School"\naddress = "https://pebblelane.example/home/"\nlanguages = [%s]\nkey = "puddle"\n' \
    '"en", "es", "ar", "fr", "ht", "ko", "pt", "ru", "so", "uk", "vi", "zh-Hans"' > "$3/site.toml"
  set -- "$3" "$2" $(ls "$1"/weeks/*"$2" | grep -v '\.[a-z]*\.md$')
  to=$1 ending=$2 i=0
  shift 2
  while [ $i -lt "$weeks" ]; do
    for week in "$@"; do
      [ $i -lt "$weeks" ] || break
      sed '/^ar = /,$d' "$week" > "$to/weeks/$(date -u -d "2000-01-03 +$((7 * i)) days" +%F)$ending"
      i=$((i + 1))
    done
  done
}
endingThen=.toml
ls "$work"/then/site/weeks/*.toml > /dev/null 2>&1 || endingThen=.md
school "$work/then/site" "$endingThen" "$work/school-then"
school site .toml "$work/school-now"

run() { # NAME
  /usr/bin/time -f "$1: %U s user, %S s system, %M kB at the peak" "$work/homebuild-$1" build "$work/school-$1" --out "$fast/$1" 2>&1 > /dev/null | tail -n 1
  echo "$1: $(find "$fast/$1/public" -type f | wc -l) pages"
  rm -rf "$fast/$1"
}
for pair in $(seq "$pairs"); do
  run then > "$work/then.txt" &
  run now > "$work/now.txt"
  wait $!
  cat "$work/then.txt" "$work/now.txt"
done
