<#list dependencyMap as entry>
<#if entry.getKey().groupId != "org.tenthmark">
${entry.getKey().groupId}:${entry.getKey().artifactId} ${entry.getKey().version}
    ${entry.getValue()?join(", ")}<#if entry.getKey().url??>
    ${entry.getKey().url}</#if>
</#if>
</#list>
