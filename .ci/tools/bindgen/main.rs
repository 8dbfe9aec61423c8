//! Takes the place of the command `wasm-bindgen` while trunk builds the page.
//!
//! A program that was built with the feature `split` is first cut at the functions marked in `src/view/parts/split.rs`;
//! the parts wait in the folder `parts` beside what wasm-bindgen writes until `src/shell/stage.mjs` puts them beside
//! the page. Any other program goes through wasm-bindgen alone.

use anyhow::{Context, Result, anyhow, bail};
use std::fs;
use std::path::{Path, PathBuf};
use wasm_bindgen_cli_support::Bindgen;

/// How the names of the imports and exports begin at which a program is to be split.
const MARK: &[u8] = b"__wasm_split_00";

/// What trunk asks for.
struct Args {
    program: PathBuf,
    out_dir: PathBuf,
    out_name: String,
    keep_debug: bool,
}

impl Args {
    /// # Errors
    ///
    /// An argument that trunk does not give for this page, or one that is missing.
    fn parse(args: impl Iterator<Item = String>) -> Result<Self> {
        let (mut program, mut out_dir, mut out_name, mut keep_debug) = (None, None, None, false);
        for arg in args {
            match arg.split_once('=').unwrap_or((&arg, "")) {
                ("--out-dir", folder) => out_dir = Some(PathBuf::from(folder)),
                ("--out-name", name) => out_name = Some(name.to_owned()),
                ("--keep-debug", "") => keep_debug = true,
                ("--target", "web") | ("--no-typescript", "") => {}
                (file, "") if file.ends_with(".wasm") => program = Some(PathBuf::from(file)),
                _ => bail!("`{arg}` is not known here; see `.ci/tools/bindgen/main.rs`"),
            }
        }
        Ok(Self {
            program: program.context("no program is given")?,
            out_dir: out_dir.context("--out-dir is missing")?,
            out_name: out_name.context("--out-name is missing")?,
            keep_debug,
        })
    }
}

/// Splits `program` into `parts`; gives the file of the part that is loaded at the start.
fn split(program: &[u8], parts: &Path, name: &str) -> Result<PathBuf> {
    let main_out_path = parts.join(name).with_extension("main");
    let main_module = format!("./{name}.js");
    let mut options = wasm_split_cli_support::Options::new(program);
    options.output_dir = parts;
    options.main_out_path = &main_out_path;
    options.main_module = &main_module;
    wasm_split_cli_support::transform(options).map_err(|error| anyhow!("{error:?}"))?;
    Ok(main_out_path)
}

fn main() -> Result<()> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    if args == ["--version"] {
        println!("wasm-bindgen {}", env!("CARGO_PKG_VERSION"));
        return Ok(());
    }
    let Args { program, out_dir, out_name, keep_debug } = Args::parse(args.into_iter())?;
    let parts = out_dir.join("parts");
    if parts.exists() {
        fs::remove_dir_all(&parts).with_context(|| parts.display().to_string())?;
    }
    let bytes = fs::read(&program).with_context(|| program.display().to_string())?;
    let is_split = bytes.windows(MARK.len()).any(|window| window == MARK);
    let start = if is_split { split(&bytes, &parts, &out_name).context("splitting the program")? } else { program };
    Bindgen::new()
        .web(true)?
        .input_path(&start)
        .out_name(&out_name)
        .typescript(false)
        .keep_debug(keep_debug)
        // The parts reach the memory and the table of functions through exports of the linker's.
        .keep_lld_exports(is_split)
        .generate(&out_dir)
        .context("wasm-bindgen")?;
    if is_split {
        fs::remove_file(&start)?;
    }
    Ok(())
}
