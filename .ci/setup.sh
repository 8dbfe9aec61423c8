# Sets up what building and testing need. Source it, then call `setup_build` or `setup_tests`.
#
# Tools are pinned here and kept per user in ${XDG_CACHE_HOME:-~/.cache}/nightbank-tools/<tool>-<version>,
# so a second clone only compiles the project itself. Nothing is installed that is already there.
# shellcheck shell=bash

readonly TRUNK_VERSION=0.21.14
readonly BINARYEN_VERSION=132.0.0
readonly TERSER_VERSION=5.51.4
readonly GECKODRIVER_VERSION=0.37.1
readonly NODE_MAJOR=20
# No path of this machine in what is published, so the same source gives the same bytes anywhere.
readonly REMAP=--remap-path-prefix=${CARGO_HOME:-$HOME/.cargo}/registry/src=crates
# The program is split into parts after linking; that needs to know what refers to what.
readonly RELOCATIONS=-Clink-arg=--emit-relocs
# Functions are put in the order of their names, like beside like, which packs better; these names tell kinds of types
# apart. They are not in what is published.
readonly NAMES=-Csymbol-mangling-version=v0
# A panic stops the program at once, without making up a message from texts that everybody would have to fetch. The page
# shows its panel with the place all the same (src/view/recovery.rs). Only with a standard library built that way; the
# flag is not yet stable in the compiler, and RUSTC_BOOTSTRAP lets it have it.
readonly TERSE="-Zunstable-options -Cpanic=immediate-abort"

ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
TOOLS=${XDG_CACHE_HOME:-$HOME/.cache}/nightbank-tools
LOGS=$ROOT/tests/output/logs
mkdir -p "$TOOLS" "$LOGS"
cd "$ROOT"

say() { printf '[%s] %s\n' "$(date +%T)" "$*"; }

die() {
  printf '\nFAILED: %s\n' "$1" >&2
  shift
  (($#)) && printf '  %s\n' "$@" >&2
  exit 1
}

have() { command -v "$1" >/dev/null 2>&1; }

# step <log name> <what it does> <what to do if it fails> <command...>
# Keeps the command's output in a log, gives a sign of life every 20 s, shows the end of the log on failure.
step() {
  local log=$LOGS/$1.log what=$2 hint=$3 pid started=$SECONDS ticks=0
  shift 3
  say "$what"
  "$@" >"$log" 2>&1 </dev/null &
  pid=$!
  while kill -0 "$pid" 2>/dev/null; do
    sleep 0.2
    ticks=$((ticks + 1))
    if ((ticks % 100 == 0)); then
      say "  ... $((SECONDS - started)) s: $(tail -n 1 "$log" | tr -d '\r' | cut -c 1-90)"
    fi
  done
  if wait "$pid"; then
    ((SECONDS - started < 5)) || say "  done in $((SECONDS - started)) s"
    return 0
  fi
  tail -n 60 "$log" >&2
  printf '\nFAILED: %s\n  %s\n  The whole log: %s\n' "$what" "$hint" "${log#"$ROOT"/}" >&2
  return 1
}

# as_root <command...>: directly, or through sudo where that works without (or with) a person at the keyboard.
as_root() {
  if ((EUID == 0)); then
    "$@"
  else
    sudo -n "$@" 2>/dev/null || sudo "$@"
  fi
}

apt_install() {
  local missing=() package
  for package in "$@"; do
    [[ $(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null) == installed ]] || missing+=("$package")
  done
  ((${#missing[@]})) || return 0
  apt_fetch "${missing[@]}"
}

# apt_fetch <packages...>: installs them, or brings them up to date, from package lists of today.
apt_fetch() {
  local command="apt-get install -y --no-install-recommends $*"
  if ((EUID != 0)) && ! { have sudo && { sudo -n true 2>/dev/null || [[ -t 0 ]]; }; }; then
    die "these Debian packages are missing or too old, and need root to install: $*" "As root: $command"
  fi
  if ((EUID != 0)) && ! sudo -n true 2>/dev/null; then sudo -v; fi
  # A fresh machine has no package lists or old ones. Old lists name packages that the mirrors no longer have, or
  # versions too old to build with.
  if [[ -z ${APT_REFRESHED:-} ]]; then
    step apt-update "Refreshing the Debian package lists" "Check the network and the apt sources." \
      as_root env DEBIAN_FRONTEND=noninteractive apt-get update || exit 1
    APT_REFRESHED=1
  fi
  # shellcheck disable=SC2086
  step apt-install "Installing $*" "Check the network, then run: $command" \
    as_root env DEBIAN_FRONTEND=noninteractive $command || exit 1
}

# at_least <version> <wanted version>
at_least() { [[ $(printf '%s\n%s\n' "$2" "$1" | sort -V | head -n 1) == "$2" ]]; }

# announce: says once what is coming where a tool has to be compiled first.
announce() {
  [[ -z ${ANNOUNCED:-} ]] || return 0
  ANNOUNCED=1
  say "The first time here some tools are compiled, once for this user: 10 to 20 minutes on two processors."
}

# ---------------------------------------------------------------------------------------------- Rust

# A wasm32 standard library that the current `rustc` already has.
has_wasm_std() {
  compgen -G "$(rustc --print sysroot)/lib/rustlib/wasm32-unknown-unknown/lib/libstd-*.rlib" >/dev/null
}

setup_rust() {
  if ! have cargo || ! have rustc; then
    have apt-get || die "there is no Rust here" "Install Rust 1.88 or newer (rustup, or your system's packages), then run this again."
    apt_install rustc-web cargo-web
  fi
  if ! have cc; then
    have apt-get || die "there is no C compiler (cc) here" "Install gcc or clang; the build tools need one."
    apt_install gcc libc6-dev
  fi
}

# The checks want rustfmt and clippy; rustup brings both, Debian packages them.
setup_rust_lints() {
  if cargo fmt --version >/dev/null 2>&1 && cargo clippy --version >/dev/null 2>&1; then return; fi
  if have rustup; then
    die "rustfmt or clippy is missing" "Run: rustup component add rustfmt clippy"
  elif have apt-get; then
    apt_install rustfmt-web rust-web-clippy
  else
    die "rustfmt or clippy is missing" "Install them from where your Rust comes from."
  fi
}

# Sets WASM_BIN (goes before PATH) and WASM_ENV: what `cargo build --target wasm32-unknown-unknown` needs.
#
# - a compiler that has the target already: nothing;
# - rustup: `rustup target add`;
# - Debian, or rustup told not to install (RUSTUP_AUTO_INSTALL=0): Debian's compiler, and its standard
#   library built for wasm32 from Debian's copy of the source, once per compiler version, in the tools cache.
setup_wasm() {
  WASM_BIN='' WASM_FLAGS=$REMAP WASM_ENV=()
  # What is weighed in the end depends on whether the standard library was built for size.
  export NIGHTBANK_STD=ready-made
  if has_wasm_std; then return; fi
  if have rustup && [[ ${RUSTUP_AUTO_INSTALL:-1} != 0 ]]; then
    step rustup "Adding the wasm32-unknown-unknown target with rustup" \
      "Check the network, or run: rustup target add wasm32-unknown-unknown" \
      rustup target add wasm32-unknown-unknown || exit 1
    return
  fi
  have apt-get || die "this compiler has no wasm32-unknown-unknown target" \
    "With rustup: rustup target add wasm32-unknown-unknown" "Otherwise install your system's package for that target."
  apt_install rustc-web cargo-web rust-web-src lld-19
  local version wanted sysroot bin=$TOOLS/debian-rust-bin host
  wanted=$(sed -n 's/^rust-version = "\(.*\)"/\1/p' Cargo.toml)
  version=$(/usr/bin/rustc -V | cut -d ' ' -f 2)
  if ! at_least "$version" "$wanted"; then
    apt_fetch rustc-web cargo-web rust-web-src lld-19
    version=$(/usr/bin/rustc -V | cut -d ' ' -f 2)
    at_least "$version" "$wanted" || die "Debian's compiler here is $version, and $wanted or newer is needed" \
      "Install a newer Rust with the wasm32-unknown-unknown target, for example with rustup."
  fi
  host=$(/usr/bin/rustc -vV | sed -n 's/^host: //p')
  sysroot=$TOOLS/wasm-std-$version-terse
  [[ -f $sysroot/stamp ]] || build_wasm_std "$sysroot" "$host" || exit 1
  drop_what_does_not_fit "$sysroot/stamp"
  NIGHTBANK_STD=small
  mkdir -p "$bin"
  ln -sfn /usr/bin/cargo /usr/bin/rustc /usr/bin/rustdoc "$bin/"
  WASM_BIN=$bin:
  WASM_FLAGS="$REMAP $TERSE --sysroot=$sysroot"
  WASM_ENV=(CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=wasm-ld-19 RUSTC_BOOTSTRAP=1)
}

# drop_what_does_not_fit <stamp of the standard library>: what was compiled against another build of it cannot be linked,
# and cargo does not notice.
drop_what_does_not_fit() {
  local target=${CARGO_TARGET_DIR:-$ROOT/target}
  cmp -s "$1" "$target/wasm-std-stamp" && return
  rm -rf "$target/wasm32-unknown-unknown"
  mkdir -p "$target"
  cp "$1" "$target/wasm-std-stamp"
}

# build_wasm_std <sysroot> <host triple>: with bitcode embedded, as fat LTO asks for, for size, and without messages of
# panics: what a phone fetches first is some 12 % smaller than with a ready-made one, which is built for speed.
build_wasm_std() {
  local sysroot=$1 host=$2 work
  work=$(mktemp -d)
  mkdir -p "$work/crate/src" "$work/sysroot/lib/rustlib/wasm32-unknown-unknown/lib"
  printf '[package]\nname = "std-for-wasm"\nversion = "0.0.0"\nedition = "2021"\n[profile.release]\nopt-level = "z"\n' \
    >"$work/crate/Cargo.toml"
  : >"$work/crate/src/lib.rs"
  announce
  step wasm-std "Compiling the standard library for wasm32 (about 2 minutes)" \
    "It needs Debian's rustc-web, cargo-web, rust-web-src and lld-19 of one version." \
    env -C "$work/crate" -u RUSTUP_TOOLCHAIN -u CARGO_TARGET_DIR PATH="/usr/bin:$PATH" \
    RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 RUSTFLAGS="-Cembed-bitcode=yes $REMAP $TERSE" \
    CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=wasm-ld-19 \
    /usr/bin/cargo build --release -Zbuild-std=std,panic_abort,proc_macro,test -Zbuild-std-features=optimize_for_size \
    --target wasm32-unknown-unknown \
    || return 1
  cp "$work"/crate/target/wasm32-unknown-unknown/release/deps/*.rlib \
    "$work/sysroot/lib/rustlib/wasm32-unknown-unknown/lib/"
  rm "$work"/sysroot/lib/rustlib/wasm32-unknown-unknown/lib/libstd_for_wasm-*
  ln -s "/usr/lib/rustlib/$host" "$work/sysroot/lib/rustlib/$host"
  date -u +%s%N >"$work/sysroot/stamp"
  rm -rf "$sysroot"
  mv -T "$work/sysroot" "$sysroot"
  rm -rf "$work"
}

# --------------------------------------------------------------------------------------------- tools

# cargo_tool <name> <what is coming> <folder in the tools cache> <arguments of cargo install...>
#
# Compiled without optimisation: what that saves on a fresh machine is more than what a build of the page loses by it.
# TOOL_OPT_LEVEL says otherwise.
cargo_tool() {
  local name=$1 what=$2 home=$TOOLS/$3 level=${TOOL_OPT_LEVEL:-0}
  shift 3
  if [[ ! -f $home/done ]]; then
    announce
    step "install-$name" "Compiling $what" "Check the network and that a C compiler is there, then run this again." \
      env CARGO_TARGET_DIR="$TOOLS/target-$name" CARGO_PROFILE_RELEASE_OPT_LEVEL=$level CARGO_PROFILE_RELEASE_LTO=off \
      CARGO_PROFILE_RELEASE_CODEGEN_UNITS=64 CARGO_PROFILE_RELEASE_STRIP=debuginfo \
      cargo install --root "$home" --locked "$@" || exit 1
    rm -rf "$TOOLS/target-$name"
    touch "$home/done"
  fi
  PATH=$home/bin:$PATH
}

# Without encryption, as it has nothing to fetch and serves this machine alone.
setup_trunk() {
  cargo_tool trunk "trunk $TRUNK_VERSION, which puts the page together (5 to 8 minutes)" "trunk-$TRUNK_VERSION" \
    trunk --version "$TRUNK_VERSION" --no-default-features
}

# What stands between the linker and wasm-opt; of exactly the version of wasm-bindgen in the lock file.
setup_bindgen() {
  local crate=.ci/tools/bindgen ours wanted hash
  ours=$(sed -n 's/^version = "\(.*\)"/\1/p' $crate/Cargo.toml)
  wanted=$(awk '$1 == "name" && $3 == "\"wasm-bindgen\"" { getline; gsub(/"/, "", $3); print $3; exit }' Cargo.lock)
  [[ $ours == "$wanted" ]] || die "Cargo.lock has wasm-bindgen $wanted, and $crate is made for $ours" \
    "Put $wanted in the place of $ours in $crate/Cargo.toml, in both lines." \
    "Then run: cargo update --manifest-path $crate/Cargo.toml wasm-bindgen-cli-support"
  hash=$(cat $crate/Cargo.toml $crate/Cargo.lock $crate/main.rs <(echo opt 1) | sha256sum | cut -c 1-12)
  # It runs at every saved edit of `.ci/dev`: 6 s of processor time where it would take 26 without optimisation, for
  # 135 s more to compile it.
  TOOL_OPT_LEVEL=1 cargo_tool bindgen "wasm-bindgen $wanted and the splitter (2 to 4 minutes)" "bindgen-$hash" --path $crate
}

setup_node() {
  if ! have node || ! have npm; then
    have apt-get || die "there is no Node.js here" "Install Node.js $NODE_MAJOR or newer, with npm."
    apt_install nodejs npm
  fi
  (($(node -p 'process.versions.node.split(".")[0]') >= NODE_MAJOR)) && return
  # Older Debian releases carry an older Node.js; the npm package `node` brings a newer one.
  local home=$TOOLS/node-$NODE_MAJOR
  if [[ ! -x $home/node_modules/.bin/node ]]; then
    step install-node "Fetching Node.js $NODE_MAJOR from npm (the one here is $(node -v))" \
      "Or install Node.js $NODE_MAJOR or newer yourself." \
      npm install --prefix "$home" --no-audit --no-fund "node@$NODE_MAJOR" || exit 1
  fi
  PATH=$home/node_modules/.bin:$PATH
}

# npm_tool <package> <version> <what it is for>
npm_tool() {
  local package=$1 version=$2 home=$TOOLS/$1-$2
  if [[ ! -f $home/done ]]; then
    step "install-$package" "Fetching $package $version from npm: $3" "Check the network." \
      npm install --prefix "$home" --no-audit --no-fund "$package@$version" || exit 1
    touch "$home/done"
  fi
  PATH=$home/node_modules/.bin:$PATH
}

# Everything `trunk_build` and `trunk_serve` need; with "ahead", the program is compiled as `trunk_build` will want it
# while the tools are: the last part of it, link-time optimisation, keeps one processor busy for minutes.
setup_build() {
  local ahead=
  # One set-up at a time: two clones may start together.
  if have flock; then
    exec 9>"$TOOLS/lock"
    flock -n 9 || { say "Waiting for another set-up to finish"; flock 9; }
  fi
  setup_rust
  setup_node
  npm_tool binaryen "$BINARYEN_VERSION" "wasm-opt, which makes the program smaller"
  npm_tool terser "$TERSER_VERSION" "makes the script around it smaller"
  setup_wasm
  if [[ ${1:-} == ahead && ! -f $TOOLS/trunk-$TRUNK_VERSION/done ]] && fetch_crates; then
    with_wasm "$RELOCATIONS $NAMES" cargo build --release --offline --target wasm32-unknown-unknown --bin nightbank \
      --features split >"$LOGS/ahead.log" 2>&1 </dev/null &
    ahead=$!
  fi
  setup_bindgen
  setup_trunk
  # What may have stopped it stops trunk as well, and is told there.
  [[ -z $ahead ]] || wait "$ahead" || true
  if have flock; then exec 9>&-; fi
}

# with_wasm <compiler flags> <command...>: with the compiler and its flags as the page needs them.
with_wasm() {
  local flags="$WASM_FLAGS $1"
  shift
  env -u RUSTFLAGS -u CARGO_BUILD_TARGET RUST_BACKTRACE=0 PATH="$WASM_BIN$PATH" "${WASM_ENV[@]}" \
    CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS="$flags" "$@"
}

fetch_crates() {
  step cargo-fetch "Fetching crates" \
    "Check the network. If Cargo.lock is out of date: run cargo check and commit it." cargo fetch --locked
}

# trunk_build <extra trunk arguments...>: the release build into dist/.
trunk_build() {
  fetch_crates || return 1
  step trunk-build "Building the page (release; about 2 minutes, 5 to 10 the first time)" \
    "The compiler's messages stand above." \
    with_wasm "$RELOCATIONS $NAMES" env PATH="$ROOT/.ci/tools:$WASM_BIN$PATH" \
    NIGHTBANK_WASM_BINDGEN="$(command -v wasm-bindgen)" trunk build --release --features split --offline true "$@"
}

# trunk_serve <extra trunk arguments...>: a debug build at a local address, built again and reloaded when a file changes.
# Debug information would be most of what is written at every edit; functions have their names without it.
trunk_serve() {
  fetch_crates || return 1
  with_wasm "" env CARGO_PROFILE_DEV_DEBUG=false trunk serve --offline true --dist "${CARGO_TARGET_DIR:-target}/dev" "$@"
}

# ------------------------------------------------------------------------------------- browser tests

# Sets CHROMIUM to a real browser of the Chromium family, and CHROMIUM_HEADLESS to the same without windows where Debian
# has it: most tests run in that.
setup_browser() {
  local name
  if [[ -z ${CHROMIUM:-} ]]; then
    for name in chromium chromium-browser google-chrome google-chrome-stable \
      "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"; do
      if have "$name"; then CHROMIUM=$(command -v "$name"); break; fi
    done
  fi
  if [[ -z ${CHROMIUM:-} ]]; then
    have apt-get || die "there is no Chromium here" "Install Chromium or Chrome, or set CHROMIUM to its path."
    apt_install chromium
    CHROMIUM=$(command -v chromium)
  fi
  if [[ -z ${CHROMIUM_HEADLESS:-} && $CHROMIUM == /usr/bin/chromium ]]; then
    if ! have chromium-headless-shell && can_install && has_package chromium-headless-shell; then
      # It only saves time: without it the tests run in the whole browser.
      (apt_install chromium-headless-shell) || true
    fi
    CHROMIUM_HEADLESS=$(command -v chromium-headless-shell || true)
  fi
  export CHROMIUM CHROMIUM_HEADLESS
  local modules=tests/browser/node_modules
  if ! cmp -s tests/browser/package-lock.json "$modules/.installed-lock"; then
    step npm-ci "Fetching the browser-test packages from npm" "Check the network." \
      npm ci --prefix tests/browser --no-audit --no-fund || exit 1
    cp tests/browser/package-lock.json "$modules/.installed-lock"
  fi
}

# setup_engines: browsers of three engines and the programs that drive them, for tests/browser/engines.spec.mjs. One that
# is not to be had is left out, and NIGHTBANK_WITHOUT_<engine> says why; where CI is set it has to be there.
setup_engines() {
  local names=() name
  # Chromium's driver has to be of the version of the browser: it comes from the same place.
  if [[ -z ${CHROMEDRIVER:-} ]] && ! have chromedriver && have chromium && can_install; then apt_install chromium-driver; fi
  if ! [[ -n ${CHROMEDRIVER:-} ]] && ! have chromedriver; then
    without CHROMIUM "chromedriver is missing (Debian: chromium-driver; elsewhere the one of your Chromium, in CHROMEDRIVER)"
  fi

  if [[ -z ${FIREFOX:-} ]]; then
    if ! have firefox-esr && ! have firefox && can_install && has_package firefox-esr; then apt_install firefox-esr; fi
    for name in firefox-esr firefox "/Applications/Firefox.app/Contents/MacOS/firefox"; do
      if have "$name"; then FIREFOX=$(command -v "$name"); break; fi
    done
  fi
  if [[ -n ${FIREFOX:-} ]]; then
    export FIREFOX
    # Debian has no package of its driver.
    if [[ -z ${GECKODRIVER:-} ]] && ! have geckodriver; then
      cargo_tool geckodriver "geckodriver $GECKODRIVER_VERSION, which drives Firefox (about 1 minute)" \
        "geckodriver-$GECKODRIVER_VERSION" geckodriver --version "$GECKODRIVER_VERSION"
    fi
  else
    without FIREFOX "Firefox is missing (Debian: firefox-esr; elsewhere install it, or set FIREFOX to its path)"
  fi

  if [[ $(uname) == Linux ]]; then
    have WebKitWebDriver || names+=(webkit2gtk-driver)
    have Xvfb || names+=(xvfb)
    if ((${#names[@]})) && can_install; then apt_install "${names[@]}"; fi
    if [[ -z ${MINIBROWSER:-} ]]; then
      MINIBROWSER=$(compgen -G "/usr/lib*/*/webkit2gtk-4.1/MiniBrowser" | head -n 1 || true)
    fi
    export MINIBROWSER
  fi
  if ! have WebKitWebDriver || ! have Xvfb || [[ ! -x ${MINIBROWSER:-} ]]; then
    without WEBKIT "WebKitWebDriver, MiniBrowser or Xvfb is missing (Debian, Ubuntu: webkit2gtk-driver xvfb; on other systems there is none)"
  fi
}

# without <engine> <why>
without() {
  [[ -z ${CI:-} ]] || die "on CI all three engines have to be there: $2"
  export "NIGHTBANK_WITHOUT_$1=$2"
}

# Packages can be installed here without asking a person twice.
can_install() { have apt-get && { ((EUID == 0)) || { have sudo && { sudo -n true 2>/dev/null || [[ -t 0 ]]; }; }; }; }

has_package() { [[ -n $(apt-cache policy "$1" 2>/dev/null | sed -n 's/^  Candidate: \([^(].*\)/\1/p') ]]; }

setup_tests() {
  setup_build ahead
  setup_rust_lints
  setup_browser
  setup_engines
}
