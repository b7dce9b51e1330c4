# What the scripts here share. Sourced, never run.

here=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en

die() {
  printf '%s\n' "$*" >&2
  exit 3
}

command -v dotnet >/dev/null || die "The .NET 10 SDK is needed: https://dotnet.microsoft.com/download"

# Runs a command quietly; shows what it said only when it fails.
quietly() {
  local said code
  said=$(mktemp)
  "$@" </dev/null >"$said" 2>&1
  code=$?
  [ "$code" -eq 0 ] || cat "$said" >&2
  rm -f "$said"
  return "$code"
}

# The name under which the SDK knows this machine.
machine() {
  local system processor
  case "$(uname -s)" in
    Darwin) system=osx ;;
    *) system=linux ;;
  esac
  case "$(uname -m)" in
    aarch64 | arm64) processor=arm64 ;;
    *) processor=x64 ;;
  esac
  # Systems with musl instead of glibc have names of their own.
  if [ "$system" = linux ] && ldd --version 2>&1 | grep -qi musl; then
    system=linux-musl
  fi
  printf '%s-%s' "$system" "$processor"
}

# The program, compiled ahead, in out/program; made anew only when a source has changed.
program() {
  local stamp="$here/out/program.stamp" target="$here/out/program"
  if [ -f "$stamp" ] && [ -f "$target/Lampwright.Cli.dll" ] && [ -z "$(newer "$stamp")" ]; then
    return 0
  fi
  mkdir -p "$here/out"
  # One at a time: two calls side by side would write the same files.
  exec 9>"$here/out/program.lock"
  command -v flock >/dev/null && flock 9
  if [ -f "$stamp" ] && [ -f "$target/Lampwright.Cli.dll" ] && [ -z "$(newer "$stamp")" ]; then
    exec 9>&-
    return 0
  fi
  touch "$stamp.next"
  local ahead=(-r "$(machine)" --self-contained false -p:PublishReadyToRun=true)
  if ! (publish "${ahead[@]}") 2>/dev/null; then
    # Without the compiler that works ahead (another system, no network) the same program starts slower.
    publish || {
      exec 9>&-
      return 1
    }
  fi
  mv "$stamp.next" "$stamp"
  exec 9>&-
}

newer() {
  find "$here/src" "$here"/Directory.*.props "$here/global.json" -newer "$1" -type f \
    -not -path '*/obj/*' -not -path '*/bin/*' -print -quit
}

publish() {
  quietly dotnet publish "$here/src/Lampwright.Cli" -c Release -v q --nologo \
    --artifacts-path "$here/out/build" -o "$here/out/program" -p:RunAnalyzersDuringBuild=false "$@"
}
