"use strict";
(() => {
  const quoted = (text) => '"' + (/^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/.test(text) ? "'" : "")
    + text.replace(/"/g, '""') + '"';
  const value = (box, name) => box.querySelector("[name=" + name + "]").value.trim();
  const said = document.getElementById("remarks-said");
  const number = /^\d{1,6}([.,]\d{1,6})?$/;

  const row = (box) => {
    const points = value(box, "points");
    const because = value(box, "because");
    if (points === "" && because === "") {
      return null;
    }
    const wrong = !number.test(points) ? "points" : because === "" ? "because" : null;
    if (wrong) {
      throw box.querySelector("[name=" + wrong + "]");
    }
    return [box.dataset.student, box.dataset.rule, box.dataset.cell, points, because];
  };

  document.querySelectorAll("button.waive").forEach((button) => button.addEventListener("click", () => {
    const box = button.closest(".remark");
    box.querySelector("[name=points]").value = "0";
    box.querySelector("[name=because]").focus();
  }));

  document.getElementById("remarks-write").addEventListener("click", () => {
    let rows;
    try {
      rows = [...document.querySelectorAll(".remark")].map(row).filter((one) => one);
    } catch (field) {
      if (!(field instanceof HTMLElement)) {
        throw field;
      }
      const details = field.closest("details");
      if (details) {
        details.open = true;
      }
      field.setAttribute("aria-invalid", "true");
      said.textContent = said.dataset.incomplete;
      field.focus();
      return;
    }
    document.querySelectorAll("[aria-invalid]").forEach((one) => one.removeAttribute("aria-invalid"));
    const table = [["student", "rule", "cell", "points", "because"], ...rows]
      .map((cells) => cells.map(quoted).join(",") + "\r\n").join("");
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob(["\uFEFF" + table], {type: "text/csv"}));
    link.download = "remarks.csv";
    link.click();
    said.textContent = said.dataset.written.replace("{0}", rows.length);
  });
})();
